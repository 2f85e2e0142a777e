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
    Optional<Fields> fields = DataFile.fields(file, SequenceVocabulary.SEQUENCE_KEYS, remarks);
    if (fields.isPresent()) {
      for (Fields block : fields.get().blocks(SequenceVocabulary.ROWS)) {
        Optional<SequenceRow> row = row(block);
        if (row.isPresent()) {
          rows.add(row.get());
        }
      }
    }
    return rows;
  }

  private Optional<SequenceRow> row(Fields block) {
    Source source = names.sources().of(block);
    Optional<Fields> after = block.block(SequenceVocabulary.ROW_AFTER);
    Optional<Left> left = after.isPresent() ? left(after.get()) : Optional.empty();
    List<Scalar> before = block.texts(SequenceVocabulary.ROW_BEFORE);
    List<String> known = new ArrayList<>();
    for (Scalar word : before) {
      if (names.species().check(word, remarks)) {
        known.add(word.text());
      }
    }
    boolean never = block.word(SequenceVocabulary.ROW_NEVER, "an answer").isPresent();
    if (block.has(SequenceVocabulary.ROW_NEVER) == block.has(SequenceVocabulary.ROW_FLUSH)) {
      remarks.add(
          Finding.error(CODE, block.place(), "a row of the sequence needs one of flush and never")
              .helping("write flush: {quantity: 25 kg, with: maize, to: what becomes of it}")
              .helping("or write never: yes"));
      return Optional.empty();
    }
    Optional<Fields> flushed = block.block(SequenceVocabulary.ROW_FLUSH);
    Optional<Flush> flush = flushed.isPresent() ? flush(flushed.get()) : Optional.empty();
    boolean whole = known.size() == before.size() && (never || flush.isPresent());
    return left.isPresent() && whole
        ? Optional.of(
            new SequenceRow(
                left.get(),
                known,
                flush,
                block.textOr(SequenceVocabulary.ROW_BECAUSE, ""),
                source,
                block.placeOf(SequenceVocabulary.ROW_AFTER)))
        : Optional.empty();
  }

  private Optional<Left> left(Fields block) {
    int told =
        (block.has(SequenceVocabulary.LEFT_HOLDS) ? 1 : 0)
            + (block.has(SequenceVocabulary.LEFT_TRAIT) ? 1 : 0)
            + (block.has(SequenceVocabulary.LEFT_NUTRIENT) ? 1 : 0)
            + (block.has(SequenceVocabulary.LEFT_MADE) ? 1 : 0);
    if (told != 1
        || block.has(SequenceVocabulary.LEFT_NUTRIENT)
            != block.has(SequenceVocabulary.LEFT_ABOVE)) {
      remarks.add(
          Finding.error(
                  CODE,
                  block.place(),
                  "what is left behind is given by one of holds, trait, made, and nutrient with above")
              .helping("write holds: and a group or ingredient, or trait: and a trait")
              .helping("or write {nutrient: copper, above: 15 mg/kg}")
              .helping("or write made: and what the plant also makes"));
      return Optional.empty();
    }
    if (block.has(SequenceVocabulary.LEFT_HOLDS)) {
      return held(block);
    }
    if (block.has(SequenceVocabulary.LEFT_TRAIT)) {
      Optional<Trait> trait = block.oneOf(SequenceVocabulary.LEFT_TRAIT, "a trait");
      return trait.isPresent() ? Optional.of(marked(trait.get())) : Optional.empty();
    }
    if (block.has(SequenceVocabulary.LEFT_MADE)) {
      Optional<AlsoMade> made =
          block.oneOf(SequenceVocabulary.LEFT_MADE, "a kind of feed that is also made");
      return made.isPresent() ? Optional.of(new Left.Besides(made.get())) : Optional.empty();
    }
    Optional<Scalar> name = block.text(SequenceVocabulary.LEFT_NUTRIENT);
    if (name.isEmpty() || !names.nutrients().check(name.get(), remarks)) {
      return Optional.empty();
    }
    Optional<Nutrient> nutrient = nutrients.named(name.get().text());
    return nutrient.isPresent() ? above(nutrient.get(), block) : Optional.empty();
  }

  private Optional<Left> held(Fields block) {
    Optional<Scalar> name = block.text(SequenceVocabulary.LEFT_HOLDS);
    return name.isPresent() && holdable.check(name.get(), remarks)
        ? Optional.of(new Left.Held(name.get().text(), title(name.get().text())))
        : Optional.empty();
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
    OptionalDouble most = new FigureReader(remarks).base(written, nutrient.unit().kind());
    return most.isEmpty() || written.isEmpty()
        ? Optional.empty()
        : Optional.of(new Left.Above(nutrient, most.getAsDouble(), written.get().text()));
  }

  private Optional<Flush> flush(Fields block) {
    Optional<Scalar> quantity = block.text(SequenceVocabulary.FLUSH_QUANTITY);
    OptionalDouble kg = new FigureReader(remarks).positive(quantity, Extent.WEIGHT);
    CommonSpan.FLUSH.look(quantity, kg, remarks);
    Optional<Scalar> name = block.text(SequenceVocabulary.FLUSH_WITH);
    Optional<Ingredient> with =
        name.isPresent() && flushable.check(name.get(), remarks)
            ? ingredients.apply(name.get().text())
            : Optional.empty();
    Optional<String> to = block.string(SequenceVocabulary.FLUSH_TO);
    return kg.isEmpty() || with.isEmpty() || to.isEmpty()
        ? Optional.empty()
        : Optional.of(new Flush(kg.getAsDouble(), with.get(), to.get()));
  }
}
