package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT_OR_NONE;
import static dev.pellucid.engine.data.Vocabulary.ANALYSES;
import static dev.pellucid.engine.data.Vocabulary.CONTENT;
import static dev.pellucid.engine.data.Vocabulary.CONTENT_OR_NOT_KNOWN;
import static dev.pellucid.engine.data.Vocabulary.FOR_SPECIES;
import static dev.pellucid.engine.data.Vocabulary.RANGE;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.TEXTS;
import static dev.pellucid.engine.data.Vocabulary.WORD;
import static dev.pellucid.engine.data.Vocabulary.WORDS;

import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;

/** Every key of a file of {@code ingredients/}. */
final class IngredientVocabulary {
  static final Keys CONTENTS_KEYS =
      Keys.of("a block of contents", SOURCE, ANALYSES, FOR_SPECIES)
          .orElse("the name of a nutrient", CONTENT_OR_NOT_KNOWN);

  static final Keys MEASURED_KEYS =
      Keys.of("a block of contents", SOURCE, ANALYSES, FOR_SPECIES)
          .orElse("the name of a nutrient", CONTENT);

  static final Key<Named<ProcessKind>> DIGESTIBILITY_PROCESS =
      may("process", new Named<>(ProcessKind.class), "the kind of process");

  static final Keys DIGESTIBILITY_KEYS =
      Keys.of("a block of digestibility", SOURCE, FOR_SPECIES, DIGESTIBILITY_PROCESS)
          .orElse("the name of a nutrient", AMOUNT);

  static final Key<Text> CAP_SPECIES = must("species", WORD, "the species or group of species");
  static final Key<Text> CAP_MAX =
      must("max", AMOUNT_OR_NONE, "the most that a feed may hold; none where there is no most");
  static final Key<Text> CAP_BECAUSE = must("because", TEXT, "the reason");

  static final Key<OneOf> CAP_ON_PURPOSE =
      may(
          "on-purpose",
          new OneOf(List.of("yes")),
          "that it is meant so, where it is far from the caps of like ingredients");

  static final Keys CAP_KEYS =
      Keys.of("a cap", CAP_SPECIES, CAP_MAX, CAP_BECAUSE, CAP_ON_PURPOSE, SOURCE);

  static final Keys CLASSES_KEYS =
      Keys.of("a block of stability").orElse("the name of a nutrient", WORD);

  static final Key<Text> PARTICLE_MASS = may("mass", AMOUNT, "what one grain weighs");
  static final Key<Text> PARTICLE_DIAMETER =
      may("diameter", AMOUNT, "how wide one grain is, in place of its mass");
  static final Key<Text> PARTICLE_DENSITY =
      may("density", AMOUNT, "of the grain itself, beside the diameter");

  static final Keys PARTICLE_KEYS =
      Keys.of("a particle", SOURCE, PARTICLE_MASS, PARTICLE_DIAMETER, PARTICLE_DENSITY);

  static final Key<Text> ADDITIVE_FUNCTIONAL_GROUP =
      must("functional-group", TEXT, "what it is for, as the label says it");
  static final Key<Text> ADDITIVE_NUMBER = may("number", TEXT, "its identification number");
  static final Key<Text> ADDITIVE_NUTRIENT =
      may("nutrient", WORD, "the nutrient that its amount is told in");

  static final Keys ADDITIVE_KEYS =
      Keys.of("an additive", ADDITIVE_FUNCTIONAL_GROUP, ADDITIVE_NUMBER, ADDITIVE_NUTRIENT, SOURCE);

  static final Key<Text> NAME = must("name", TEXT, "its name for people");
  static final Key<ListOf<Text>> FORMERLY = may("formerly", WORDS, "names it had before");
  static final Key<ListOf<Text>> GROUPS = must("groups", WORDS, "groups of groups.yaml");
  static final Key<Named<Form>> FORM =
      must("form", new Named<>(Form.class), "what it is like in the hand");
  static final Key<ListOf<Named<Trait>>> TRAITS =
      may("traits", new ListOf<>(new Named<>(Trait.class)), "what rules must know of it");
  static final Key<ListOf<Block>> CONTENTS =
      must("contents", new ListOf<>(new Block(CONTENTS_KEYS)), "what it holds, as fed");
  static final Key<ListOf<Block>> DIGESTIBILITY =
      may(
          "digestibility",
          new ListOf<>(new Block(DIGESTIBILITY_KEYS)),
          "the parts that fish digest");
  static final Key<Block> STABILITY =
      may("stability", new Block(CLASSES_KEYS), "where the form differs from the nutrient's class");
  static final Key<ListOf<Text>> PROTEIN = may("protein", WORDS, "the species whose protein it is");
  static final Key<ListOf<Block>> CAPS =
      may("caps", new ListOf<>(new Block(CAP_KEYS)), "the most that species take");
  static final Key<Text> USUAL_SHARE =
      may("usual-share", RANGE, "where its share of a feed usually lies: 0.1 to 1 %");
  static final Key<Text> BULK_DENSITY =
      may("bulk-density", AMOUNT, "mass per volume as it lies in the mixer");
  static final Key<Block> PARTICLE = may("particle", new Block(PARTICLE_KEYS), "one grain of it");
  static final Key<Text> USE_BELOW_MOISTURE =
      may("use-below-moisture", AMOUNT, "above this moisture it must not be used");
  static final Key<ListOf<Text>> CAUTIONS = may("cautions", TEXTS, "what the batch sheet warns of");
  static final Key<Block> ADDITIVE =
      may("additive", new Block(ADDITIVE_KEYS), "where a label lists it as an additive");

  static final Key<Text> LABEL_NAME =
      may("label-name", TEXT, "what feed law calls it, for the bag");
  static final Key<OneOf> GENETICALLY_MODIFIED =
      may(
          "genetically-modified",
          new OneOf(List.of("yes", "no", "not-known")),
          "whether it comes of such plants, as its supplier declares");

  static final Keys INGREDIENT_KEYS =
      Keys.of(
          "an ingredient",
          NAME,
          LABEL_NAME,
          FORMERLY,
          GROUPS,
          FORM,
          TRAITS,
          CONTENTS,
          DIGESTIBILITY,
          STABILITY,
          PROTEIN,
          CAPS,
          USUAL_SHARE,
          BULK_DENSITY,
          PARTICLE,
          USE_BELOW_MOISTURE,
          CAUTIONS,
          ADDITIVE,
          GENETICALLY_MODIFIED);

  private IngredientVocabulary() {}
}
