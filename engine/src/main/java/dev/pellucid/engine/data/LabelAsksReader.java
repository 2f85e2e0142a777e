package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.LabelRules.Asked;
import dev.pellucid.engine.data.LabelRules.DeclaredAdditives;
import dev.pellucid.engine.data.LabelRules.ModifiedWords;
import dev.pellucid.engine.data.LabelRules.Must;
import dev.pellucid.engine.data.LabelRules.Saying;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rows of a file of {@code label/} that each stand for an article of feed law. */
final class LabelAsksReader {
  private final Names names;
  private final Known holdable;
  private final Remarks remarks;

  /**
   * @param holdable names of groups and of ingredients
   */
  LabelAsksReader(Names names, Known holdable, Remarks remarks) {
    this.names = names;
    this.holdable = holdable;
    this.remarks = remarks;
  }

  Map<Must, Asked> mustTell(Fields fields) {
    Map<Must, Asked> all = new EnumMap<>(Must.class);
    for (Fields row : fields.blocks(LabelVocabulary.MUST_TELL)) {
      Asked asked = asked(row, LabelVocabulary.MUST_TELL_WHAT);
      for (Must what : row.allOf(LabelVocabulary.MUST_TELL_WHAT, "a thing to tell")) {
        all.put(what, asked);
      }
    }
    return all;
  }

  List<DeclaredAdditives> declared(Fields fields) {
    List<DeclaredAdditives> all = new ArrayList<>();
    for (Fields row : fields.blocks(LabelVocabulary.DECLARED_ADDITIVES)) {
      List<String> nutrients = new ArrayList<>();
      for (Scalar word : row.texts(LabelVocabulary.DECLARED_NUTRIENTS)) {
        if (names.nutrients().check(word, remarks)) {
          nutrients.add(word.text());
        }
      }
      all.add(
          new DeclaredAdditives(
              nutrients,
              row.strings(LabelVocabulary.DECLARED_GROUPS),
              asked(row, LabelVocabulary.DECLARED_NUTRIENTS)));
    }
    return all;
  }

  List<Saying> sayings(Fields fields) {
    List<Saying> all = new ArrayList<>();
    for (Fields row : fields.blocks(LabelVocabulary.SAYINGS)) {
      Optional<Scalar> species = row.text(Vocabulary.FOR_SPECIES);
      if (species.isPresent()) {
        names.species().check(species.get(), remarks);
      }
      Optional<String> words = row.string(LabelVocabulary.SAID);
      if (words.isPresent()) {
        all.add(
            new Saying(
                held(row, LabelVocabulary.HOLDS),
                held(row, LabelVocabulary.BUT_NOT),
                species.isPresent() ? Optional.of(species.get().text()) : Optional.empty(),
                words.get(),
                asked(row, LabelVocabulary.HOLDS)));
      }
    }
    return all;
  }

  List<ModifiedWords> modified(Fields fields) {
    List<ModifiedWords> all = new ArrayList<>();
    for (Fields row : fields.blocks(LabelVocabulary.MODIFIED)) {
      Optional<String> words = row.string(LabelVocabulary.SAID);
      if (words.isPresent()) {
        all.add(
            new ModifiedWords(
                held(row, LabelVocabulary.HOLDS), words.get(), asked(row, LabelVocabulary.HOLDS)));
      }
    }
    return all;
  }

  private List<String> held(Fields row, Key<ListOf<Text>> key) {
    List<String> held = new ArrayList<>();
    for (Scalar word : row.texts(key)) {
      if (holdable.check(word, remarks)) {
        held.add(word.text());
      }
    }
    return held;
  }

  private Asked asked(Fields row, Key<?> first) {
    Span place = row.has(first) ? row.placeOf(first) : row.place();
    return new Asked(row.textOr(LabelVocabulary.ARTICLE, ""), names.sources().of(row), place);
  }
}
