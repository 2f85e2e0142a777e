package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXTS;
import static dev.pellucid.engine.data.Vocabulary.YES;

import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.syntax.Step;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Every key of the files of {@code practice/}, that of the sequence left out. */
final class PracticeVocabulary {
  static final Key<Text> BOUND_FROM = may("from", AMOUNT, "the low end");
  static final Key<Text> BOUND_TO = may("to", AMOUNT, "the high end");

  static final Keys BOUND_KEYS = Keys.of("a bound", BOUND_FROM, BOUND_TO, SOURCE);

  static final Keys BOUNDS_KEYS =
      Keys.of(
          "bounds.yaml", Arrays.stream(BoundOf.values()).map(PracticeVocabulary::bound).toList());

  static final Keys ROWS_KEYS =
      Keys.of("a list of temperatures").orElse("a temperature, as in 80 °C", AMOUNT);

  private static final String AFTER_STEP = "what is left after the step, by temperature";
  private static final String AFTER_MONTH = "what is left after a month, by temperature";

  static final Key<OneOf> UNPROTECTED =
      may("unprotected", YES, "a form that should not go into a heated feed");

  static final Keys RETENTION_CLASS_KEYS =
      Keys.of(
          "a stability class",
          Stream.concat(
                  Stream.of(SOURCE, UNPROTECTED),
                  Stream.concat(RetentionReader.STEPS.stream(), Stream.of(Step.STORE))
                      .map(PracticeVocabulary::rows))
              .toList());

  static final Keys RETENTION_KEYS =
      Keys.of("retention.yaml").orElse("the name of a class", new Block(RETENTION_CLASS_KEYS));

  static final Keys SPREADS_KEYS =
      Keys.of("spreads.yaml", SOURCE).orElse("the name of a nutrient", AMOUNT);

  static final Key<Text> WET_MASH = may("wet-mash", AMOUNT, "a mash with its water");

  static final Keys DENSITIES_KEYS =
      Keys.of(
          "densities.yaml",
          Stream.concat(
                  Stream.of(SOURCE, WET_MASH),
                  Arrays.stream(Form.values()).map(PracticeVocabulary::density))
              .toList());

  static final Key<Text> STEAM_TEMPERATURE = must("temperature", AMOUNT, "in °C");
  static final Key<Text> STEAM_LIQUID = must("liquid", AMOUNT, "enthalpy of the water, kJ/kg");
  static final Key<Text> STEAM_VAPOUR = must("vapour", AMOUNT, "enthalpy of the steam, kJ/kg");

  static final Keys STEAM_ROW_KEYS =
      Keys.of("a row of steam", STEAM_TEMPERATURE, STEAM_LIQUID, STEAM_VAPOUR);

  static final Key<ListOf<Block>> STEAM_ROWS =
      must("rows", new ListOf<>(new Block(STEAM_ROW_KEYS)), "by rising temperature");

  static final Keys STEAM_KEYS = Keys.of("steam.yaml", SOURCE, STEAM_ROWS);

  static final Key<ListOf<Text>> INSPECTION =
      may("inspection", TEXTS, "what to look at before anything is weighed");

  /** Cautions at each step and for each trait. */
  static final List<Key<ListOf<Text>>> CAUTIONS =
      Stream.concat(
              Arrays.stream(Step.values())
                  .map(step -> may(step.word(), TEXTS, "cautions at this step")),
              Vocabulary.words(Trait.values()).stream()
                  .map(
                      trait ->
                          may(
                              trait,
                              TEXTS,
                              "cautions where an ingredient of this trait is weighed")))
          .toList();

  static final Keys CAUTIONS_KEYS =
      Keys.of("cautions.yaml", Stream.concat(Stream.of(INSPECTION), CAUTIONS.stream()).toList());

  private PracticeVocabulary() {}

  /** The key of what practice bounds. */
  static Key<Block> bound(BoundOf of) {
    return may(of.word(), new Block(BOUND_KEYS), "what practice bounds");
  }

  /** The key of what a stability class keeps in a step. */
  static Key<Block> rows(Step step) {
    String meaning = step == Step.STORE ? AFTER_MONTH : AFTER_STEP;
    return may(step.word(), new Block(ROWS_KEYS), meaning);
  }

  /** The key of a form. */
  static Key<Text> density(Form form) {
    return may(Vocabulary.word(form), AMOUNT, "what has this form and no density of its own");
  }
}
