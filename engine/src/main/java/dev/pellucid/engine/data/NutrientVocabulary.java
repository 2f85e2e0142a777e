package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.RANGE;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.WORD;
import static dev.pellucid.engine.data.Vocabulary.WORDS;
import static dev.pellucid.engine.data.Vocabulary.YES;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;

/** Every key of a file of {@code nutrients/}. */
final class NutrientVocabulary {
  static final Key<Text> TITLE = must("title", TEXT, "its name for people");
  static final Key<Text> UNIT = must("unit", TEXT, "the unit in which it is printed");
  static final Key<OneOf> OF_THE_WHOLE =
      may("of-the-whole", YES, "one of the parts that add up to 100 %");
  static final Key<Text> PART_OF = may("part-of", WORD, "the nutrient whose mass it is a part of");
  static final Key<OneOf> JUDGED =
      may("judged", new OneOf(List.of("where-told")), "only by what tells it; untold is nothing");
  static final Key<OneOf> ANALYSED =
      may("analysed", new OneOf(List.of("no")), "no laboratory can find it in a feed");
  static final Key<Text> STABILITY =
      may("stability", WORD, "stable, or a class of practice/retention.yaml");
  static final Key<Text> FORMULA = may("formula", TEXT, "how it follows from other nutrients");
  static final Key<Text> DIGESTIBLE_OF =
      may("digestible-of", WORD, "the nutrient of which it is the digestible part");
  static final Key<Text> STANDS_IN =
      may("stands-in", WORD, "whose coefficient counts where an ingredient tells none of its own");
  static final Key<Text> USUAL_MINIMUM =
      may("usual-minimum", RANGE, "where minima in complete feed usually lie: 5 to 40 mg/kg");
  static final Key<Text> USUAL_MAXIMUM =
      may("usual-maximum", RANGE, "where maxima in complete feed usually lie: 50 to 300 mg/kg");
  static final Key<Text> SOURCE = may("source", WORD, "where the formula comes from");

  static final Key<ListOf<Text>> USUAL_IN = may("in", WORDS, "groups of groups.yaml; none: all");
  static final Key<OneOf> USUAL_AS_ADDITIVE =
      may("as-additive", YES, "for what is an additive of this nutrient");
  static final Key<Text> USUAL_HOLDS =
      must("holds", RANGE, "from the least to the most that is usual");
  static final Key<Text> USUAL_OF = may("of", WORD, "the nutrient of which it is that part");
  static final Keys USUAL_KEYS =
      Keys.of(
          "a usual span", USUAL_IN, USUAL_AS_ADDITIVE, USUAL_HOLDS, USUAL_OF, Vocabulary.SOURCE);
  static final Key<ListOf<Block>> USUAL =
      may(
          "usual",
          new ListOf<>(new Block(USUAL_KEYS)),
          "what ingredients usually hold of it; the first row that is for one counts");

  static final Keys NUTRIENT_KEYS =
      Keys.of(
          "a nutrient",
          TITLE,
          UNIT,
          OF_THE_WHOLE,
          PART_OF,
          JUDGED,
          ANALYSED,
          STABILITY,
          FORMULA,
          DIGESTIBLE_OF,
          STANDS_IN,
          USUAL_MINIMUM,
          USUAL_MAXIMUM,
          SOURCE,
          USUAL);

  static final Keys NUTRIENTS_KEYS =
      Keys.of("a file of nutrients").orElse("the name of a nutrient", new Block(NUTRIENT_KEYS));

  private NutrientVocabulary() {}
}
