package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.SequenceRow.Flush;
import dev.pellucid.engine.data.SequenceRow.Left;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** {@code practice/sequence.yaml}: what may follow what on one line. */
final class SequenceReader {
  static final String FILE = "practice/sequence.yaml";
  static final Code CODE = new Code("data-sequence");

  private final Names names;
  private final Nutrients nutrients;
  private final Map<String, Group> groups;
  private final Function<String, Optional<Ingredient>> ingredients;
  private final Known holdable;
  private final Known flushable;
  private final Remarks remarks;

  /**
   * @param ingredients the ingredient of a name
   * @param holdable names of groups and of ingredients
   * @param flushable names of ingredients
   */
  SequenceReader(
      Frame frame,
      Function<String, Optional<Ingredient>> ingredients,
      Known holdable,
      Known flushable,
      Remarks remarks) {
    this.names = frame.names();
    this.nutrients = frame.nutrients();
    this.groups = frame.groups();
    this.ingredients = ingredients;
    this.holdable = holdable;
    this.flushable = flushable;
    this.remarks = remarks;
  }

  List<SequenceRow> read(Optional<DataFile> file) {
    List<SequenceRow> rows = new ArrayList<>();
    file.flatMap(it -> it.fields(SequenceVocabulary.SEQUENCE_KEYS, remarks))
        .ifPresent(
            fields ->
                fields
                    .blocks(SequenceVocabulary.ROWS)
                    .forEach(block -> row(block).ifPresent(rows::add)));
    return rows;
  }

  private Optional<SequenceRow> row(Fields block) {
    Source source = names.sources().of(block);
    Optional<Left> left = block.block(SequenceVocabulary.ROW_AFTER).flatMap(this::left);
    List<Scalar> before = block.texts(SequenceVocabulary.ROW_BEFORE);
    List<String> known =
        before.stream()
            .filter(word -> names.species().check(word, remarks))
            .map(Scalar::text)
            .toList();
    boolean never = block.word(SequenceVocabulary.ROW_NEVER, "an answer").isPresent();
    if (block.has(SequenceVocabulary.ROW_NEVER) == block.has(SequenceVocabulary.ROW_FLUSH)) {
      remarks.add(
          Finding.error(CODE, block.place(), "a row of the sequence needs one of flush and never")
              .helping("write flush: {quantity: 25 kg, with: maize, to: what becomes of it}")
              .helping("or write never: yes"));
      return Optional.empty();
    }
    Optional<Flush> flush = block.block(SequenceVocabulary.ROW_FLUSH).flatMap(this::flush);
    boolean whole = known.size() == before.size() && (never || flush.isPresent());
    return left.filter(it -> whole)
        .map(
            it ->
                new SequenceRow(
                    it,
                    known,
                    flush,
                    block.text(SequenceVocabulary.ROW_BECAUSE).map(Scalar::text).orElse(""),
                    source,
                    block.placeOf(SequenceVocabulary.ROW_AFTER)));
  }

  private Optional<Left> left(Fields block) {
    long told =
        Stream.of(
                SequenceVocabulary.LEFT_HOLDS,
                SequenceVocabulary.LEFT_TRAIT,
                SequenceVocabulary.LEFT_NUTRIENT)
            .filter(block::has)
            .count();
    if (told != 1
        || block.has(SequenceVocabulary.LEFT_NUTRIENT)
            != block.has(SequenceVocabulary.LEFT_ABOVE)) {
      remarks.add(
          Finding.error(
                  CODE,
                  block.place(),
                  "what is left behind is told by one of holds, trait, and nutrient with above")
              .helping("write holds: and a group or ingredient, or trait: and a trait")
              .helping("or write {nutrient: copper, above: 15 mg/kg}"));
      return Optional.empty();
    }
    if (block.has(SequenceVocabulary.LEFT_HOLDS)) {
      return block
          .text(SequenceVocabulary.LEFT_HOLDS)
          .filter(name -> holdable.check(name, remarks))
          .map(name -> new Left.Held(name.text(), title(name.text())));
    }
    if (block.has(SequenceVocabulary.LEFT_TRAIT)) {
      return block.oneOf(SequenceVocabulary.LEFT_TRAIT, "a trait").map(SequenceReader::marked);
    }
    return block
        .text(SequenceVocabulary.LEFT_NUTRIENT)
        .filter(name -> names.nutrients().check(name, remarks))
        .flatMap(name -> nutrients.named(name.text()))
        .flatMap(nutrient -> above(nutrient, block));
  }

  private String title(String name) {
    Optional<Ingredient> ingredient = ingredients.apply(name);
    Group group = groups.get(name);
    if (ingredient.isPresent()) {
      return ingredient.get().title();
    }
    return group == null || group.title().isEmpty() ? name : group.title();
  }

  private static Left marked(Trait trait) {
    String words = trait.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return new Left.Marked(
        trait, words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
  }

  private Optional<Left> above(Nutrient nutrient, Fields block) {
    Optional<Scalar> written = block.text(SequenceVocabulary.LEFT_ABOVE);
    OptionalDouble most =
        written
            .map(value -> new FigureReader(remarks).base(value, nutrient.unit().kind()))
            .orElse(OptionalDouble.empty());
    return most.isEmpty()
        ? Optional.empty()
        : written.map(value -> new Left.Above(nutrient, most.getAsDouble(), value.text()));
  }

  private Optional<Flush> flush(Fields block) {
    OptionalDouble kg =
        block
            .text(SequenceVocabulary.FLUSH_QUANTITY)
            .map(value -> new FigureReader(remarks).positive(value, Extent.WEIGHT))
            .orElse(OptionalDouble.empty());
    Optional<Ingredient> with =
        block
            .text(SequenceVocabulary.FLUSH_WITH)
            .filter(name -> flushable.check(name, remarks))
            .flatMap(name -> ingredients.apply(name.text()));
    Optional<String> to = block.text(SequenceVocabulary.FLUSH_TO).map(Scalar::text);
    return kg.isEmpty() || with.isEmpty() || to.isEmpty()
        ? Optional.empty()
        : Optional.of(new Flush(kg.getAsDouble(), with.get(), to.get()));
  }
}
