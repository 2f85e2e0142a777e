package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.ANALYSES;
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
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Every key of the files of {@code practice/}, that of the sequence left out. */
final class PracticeVocabulary {
  static final Key<Text> BOUND_FROM = may("from", AMOUNT, "the low end");
  static final Key<Text> BOUND_TO = may("to", AMOUNT, "the high end");

  static final Keys BOUND_KEYS = Keys.of("a bound", BOUND_FROM, BOUND_TO, SOURCE);

  private static final Map<BoundOf, Key<Block>> BOUNDS = bounds();

  static final Keys BOUNDS_KEYS = Keys.of("bounds.yaml", List.copyOf(BOUNDS.values()));

  static final Keys ROWS_KEYS =
      Keys.of("a list of temperatures").orElse("a temperature, as in 80 °C", AMOUNT);

  private static final String AFTER_STEP = "what is left after the step, by temperature";
  private static final String AFTER_MONTH = "what is left after a month, by temperature";

  static final Key<OneOf> UNPROTECTED =
      may("unprotected", YES, "a form that should not go into a heated feed");

  private static final Map<Step, Key<Block>> ROWS = rows();

  static final Keys RETENTION_CLASS_KEYS =
      Keys.of("a stability class", keys(List.of(SOURCE, UNPROTECTED), ROWS.values()));

  static final Keys RETENTION_KEYS =
      Keys.of("retention.yaml").orElse("the name of a class", new Block(RETENTION_CLASS_KEYS));

  static final Keys MEASURED_SPREADS_KEYS =
      Keys.of("a block of spreads", SOURCE, ANALYSES).orElse("the name of a nutrient", AMOUNT);

  static final Key<ListOf<Block>> MEASURED_SPREADS =
      may(
          "measured",
          new ListOf<>(new Block(MEASURED_SPREADS_KEYS)),
          "spreads with a source of their own");

  static final Keys SPREADS_KEYS =
      Keys.of("spreads.yaml", SOURCE, ANALYSES, MEASURED_SPREADS)
          .orElse("the name of a nutrient", AMOUNT);

  static final Key<Text> WET_MASH = may("wet-mash", AMOUNT, "a mash with its water");

  private static final Map<Form, Key<Text>> DENSITIES = densities();

  static final Keys DENSITIES_KEYS =
      Keys.of("densities.yaml", keys(List.of(SOURCE, WET_MASH), DENSITIES.values()));

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
  static final List<Key<ListOf<Text>>> CAUTIONS = cautions();

  static final Keys CAUTIONS_KEYS = Keys.of("cautions.yaml", keys(List.of(INSPECTION), CAUTIONS));

  private PracticeVocabulary() {}

  /** The key of what practice bounds. */
  static Key<Block> bound(BoundOf of) {
    return key(BOUNDS, of);
  }

  /** The key of what a stability class keeps in a step that destroys, or in storage. */
  static Key<Block> rows(Step step) {
    return key(ROWS, step);
  }

  /** The key of a form. */
  static Key<Text> density(Form form) {
    return key(DENSITIES, form);
  }

  private static Map<BoundOf, Key<Block>> bounds() {
    Map<BoundOf, Key<Block>> keys = new EnumMap<>(BoundOf.class);
    for (BoundOf of : BoundOf.values()) {
      keys.put(of, may(of.word(), new Block(BOUND_KEYS), of.meaning()));
    }
    return Collections.unmodifiableMap(keys);
  }

  /** Storage stands last, whatever its place among the steps. */
  private static Map<Step, Key<Block>> rows() {
    Map<Step, Key<Block>> keys = new LinkedHashMap<>();
    for (Step step : RetentionReader.STEPS) {
      keys.put(step, may(step.word(), new Block(ROWS_KEYS), AFTER_STEP));
    }
    keys.put(Step.STORE, may(Step.STORE.word(), new Block(ROWS_KEYS), AFTER_MONTH));
    return Collections.unmodifiableMap(keys);
  }

  private static Map<Form, Key<Text>> densities() {
    Map<Form, Key<Text>> keys = new EnumMap<>(Form.class);
    for (Form form : Form.values()) {
      String meaning = "what has this form and no density of its own";
      keys.put(form, may(Vocabulary.word(form), AMOUNT, meaning));
    }
    return Collections.unmodifiableMap(keys);
  }

  private static List<Key<ListOf<Text>>> cautions() {
    List<Key<ListOf<Text>>> keys = new ArrayList<>();
    for (Step step : Step.values()) {
      keys.add(may(step.word(), TEXTS, "cautions at this step"));
    }
    for (String trait : Vocabulary.words(Trait.values())) {
      keys.add(may(trait, TEXTS, "cautions where an ingredient of this trait is weighed"));
    }
    return List.copyOf(keys);
  }

  private static List<Key<?>> keys(List<Key<?>> first, Collection<? extends Key<?>> others) {
    List<Key<?>> keys = new ArrayList<>(first);
    keys.addAll(others);
    return keys;
  }

  private static <T, H extends Keys.Holds> Key<H> key(Map<T, Key<H>> keys, T of) {
    return Objects.requireNonNull(keys.get(of), "no key for it");
  }
}
