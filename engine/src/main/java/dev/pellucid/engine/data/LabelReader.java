package dev.pellucid.engine.data;

import dev.pellucid.engine.data.LabelRules.Compulsory;
import dev.pellucid.engine.data.LabelRules.DayOrder;
import dev.pellucid.engine.data.LabelVocabulary.AdditivesStand;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One file of {@code label/}. A tolerance that cannot be read is a finding and left out. */
final class LabelReader {
  private final Nutrients nutrients;
  private final Names names;
  private final Remarks remarks;
  private final LabelAsksReader asks;

  private LabelReader(Frame frame, Known holdable, Remarks remarks) {
    this.nutrients = frame.nutrients();
    this.names = frame.names();
    this.remarks = remarks;
    this.asks = new LabelAsksReader(names, holdable, remarks);
  }

  /**
   * @param holdable names of groups and of ingredients
   */
  static Read<Optional<LabelRules>> read(DataFile file, Frame frame, Known holdable) {
    Remarks remarks = new Remarks();
    Optional<LabelRules> rules =
        file.isNamed("a set of label rules", remarks)
            ? new LabelReader(frame, holdable, remarks).named(file)
            : Optional.empty();
    return file.read(rules, remarks);
  }

  private Optional<LabelRules> named(DataFile file) {
    Optional<Fields> fields = file.fields(LabelVocabulary.LABEL_KEYS, remarks);
    return fields.isPresent() ? Optional.of(rules(file, fields.get())) : Optional.empty();
  }

  private LabelRules rules(DataFile file, Fields fields) {
    return new LabelRules(
        file.stem(),
        fields.textOr(LabelVocabulary.NAME, file.stem()),
        fields.string(LabelVocabulary.JURISDICTION),
        names.sources().of(fields),
        new FigureReader(remarks).share(fields.text(LabelVocabulary.ROUNDING)).orElse(0),
        tolerances(fields),
        compulsory(fields),
        fields.oneOf(LabelVocabulary.ADDITIVES, "a place for additives").orElse(null)
            == AdditivesStand.APART,
        fields.word(LabelVocabulary.OTHER_AMOUNTS, "an answer").isPresent(),
        asks.mustTell(fields),
        asks.declared(fields),
        asks.sayings(fields),
        asks.modified(fields),
        fields.oneOf(LabelVocabulary.DAYS, "a way to write a day").orElse(DayOrder.YEAR_MONTH_DAY),
        words(fields),
        fields.strings(LabelVocabulary.STORAGE),
        fields.strings(LabelVocabulary.CAUTIONS),
        fields.has(LabelVocabulary.NAME) ? fields.placeOf(LabelVocabulary.NAME) : fields.place());
  }

  private Map<String, Tolerance> tolerances(Fields fields) {
    Map<String, Tolerance> tolerances = new HashMap<>();
    Map<String, Span> told = new HashMap<>();
    for (Fields block : fields.blocks(LabelVocabulary.TOLERANCES)) {
      List<Nutrient> constituents = new ArrayList<>();
      for (Scalar word : block.texts(LabelVocabulary.TOLERANCE_CONSTITUENTS)) {
        Span earlier = told.putIfAbsent(word.text(), word.span());
        if (earlier != null) {
          remarks.add(ReferenceFindings.nutrientTwice(word, "in these tolerances", earlier));
        } else {
          Optional<Nutrient> nutrient = nutrient(word);
          if (nutrient.isPresent()) {
            constituents.add(nutrient.get());
          }
        }
      }
      if (!constituents.isEmpty()) {
        Read<Optional<Tolerance>> read = ToleranceReader.read(block, constituents);
        remarks.addAll(read.findings());
        if (read.thing().isPresent()) {
          for (Nutrient nutrient : constituents) {
            tolerances.put(nutrient.name(), read.thing().get());
          }
        }
      }
    }
    return tolerances;
  }

  private Optional<Nutrient> nutrient(Scalar word) {
    names.nutrients().check(word, remarks);
    return nutrients.named(word.text());
  }

  private List<Compulsory> compulsory(Fields fields) {
    List<Compulsory> all = new ArrayList<>();
    for (Fields block : fields.blocks(LabelVocabulary.COMPULSORY)) {
      Optional<Scalar> species = block.text(Vocabulary.FOR_SPECIES);
      if (species.isPresent()) {
        names.species().check(species.get(), remarks);
      }
      for (Scalar word : block.texts(LabelVocabulary.COMPULSORY_CONSTITUENTS)) {
        Optional<Nutrient> nutrient = nutrient(word);
        if (nutrient.isPresent()) {
          all.add(compulsory(nutrient.get(), block, species, word.span()));
        }
      }
    }
    return all;
  }

  private Compulsory compulsory(
      Nutrient nutrient, Fields block, Optional<Scalar> species, Span place) {
    OptionalDouble above =
        new FigureReader(remarks)
            .base(block.text(LabelVocabulary.COMPULSORY_ABOVE), nutrient.unit().kind());
    return new Compulsory(
        nutrient.name(),
        above,
        species.isPresent() ? Optional.of(species.get().text()) : Optional.empty(),
        place);
  }

  private static Map<LabelWord, String> words(Fields fields) {
    Map<LabelWord, String> words = new EnumMap<>(LabelWord.class);
    Optional<Fields> block = fields.block(LabelVocabulary.BAG_WORDS);
    if (block.isEmpty()) {
      return words;
    }
    for (LabelWord word : LabelWord.values()) {
      Optional<Scalar> text = block.get().text(LabelVocabulary.word(word));
      if (text.isPresent()) {
        words.put(word, text.get().text());
      }
    }
    return words;
  }
}
