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

  private LabelReader(Frame frame, Remarks remarks) {
    this.nutrients = frame.nutrients();
    this.names = frame.names();
    this.remarks = remarks;
  }

  static Read<Optional<LabelRules>> read(DataFile file, Frame frame) {
    Remarks remarks = new Remarks();
    Optional<LabelRules> rules =
        file.isNamed("a set of label rules", remarks)
            ? new LabelReader(frame, remarks).named(file)
            : Optional.empty();
    return file.read(rules, remarks);
  }

  private Optional<LabelRules> named(DataFile file) {
    return file.fields(LabelVocabulary.LABEL_KEYS, remarks).map(fields -> rules(file, fields));
  }

  private LabelRules rules(DataFile file, Fields fields) {
    return new LabelRules(
        file.stem(),
        fields.text(LabelVocabulary.NAME).map(Scalar::text).orElse(file.stem()),
        fields.text(LabelVocabulary.JURISDICTION).map(Scalar::text),
        names.sources().of(fields),
        rounding(fields),
        tolerances(fields),
        compulsory(fields),
        fields
            .oneOf(LabelVocabulary.ADDITIVES, "a place for additives")
            .filter(stand -> stand == AdditivesStand.APART)
            .isPresent(),
        fields.oneOf(LabelVocabulary.DAYS, "a way to write a day").orElse(DayOrder.YEAR_MONTH_DAY),
        words(fields),
        fields.texts(LabelVocabulary.STORAGE).stream().map(Scalar::text).toList(),
        fields.texts(LabelVocabulary.CAUTIONS).stream().map(Scalar::text).toList(),
        fields.has(LabelVocabulary.NAME) ? fields.placeOf(LabelVocabulary.NAME) : fields.place());
  }

  private double rounding(Fields fields) {
    return fields
        .text(LabelVocabulary.ROUNDING)
        .map(new FigureReader(remarks)::share)
        .orElse(OptionalDouble.empty())
        .orElse(0);
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
          nutrient(word).ifPresent(constituents::add);
        }
      }
      if (!constituents.isEmpty()) {
        Read<Optional<Tolerance>> read = ToleranceReader.read(block, constituents);
        remarks.addAll(read.findings());
        read.thing().ifPresent(one -> constituents.forEach(n -> tolerances.put(n.name(), one)));
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
      species.ifPresent(word -> names.species().check(word, remarks));
      for (Scalar word : block.texts(LabelVocabulary.COMPULSORY_CONSTITUENTS)) {
        nutrient(word).ifPresent(one -> all.add(compulsory(one, block, species, word.span())));
      }
    }
    return all;
  }

  private Compulsory compulsory(
      Nutrient nutrient, Fields block, Optional<Scalar> species, Span place) {
    OptionalDouble above =
        block
            .text(LabelVocabulary.COMPULSORY_ABOVE)
            .map(value -> new FigureReader(remarks).base(value, nutrient.unit().kind()))
            .orElse(OptionalDouble.empty());
    return new Compulsory(nutrient.name(), above, species.map(Scalar::text), place);
  }

  private static Map<LabelWord, String> words(Fields fields) {
    Map<LabelWord, String> words = new EnumMap<>(LabelWord.class);
    fields
        .block(LabelVocabulary.BAG_WORDS)
        .ifPresent(
            block -> {
              for (LabelWord word : LabelWord.values()) {
                block
                    .text(LabelVocabulary.word(word))
                    .ifPresent(text -> words.put(word, text.text()));
              }
            });
    return words;
  }
}
