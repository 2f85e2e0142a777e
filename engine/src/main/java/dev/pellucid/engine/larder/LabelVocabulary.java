package dev.pellucid.engine.larder;

import static dev.pellucid.engine.larder.Keys.may;
import static dev.pellucid.engine.larder.Keys.must;

import dev.pellucid.engine.larder.Keys.Holds;
import dev.pellucid.engine.larder.Keys.Holds.Block;
import dev.pellucid.engine.larder.Keys.Holds.ListOf;
import dev.pellucid.engine.larder.Keys.Holds.OneOf;
import dev.pellucid.engine.larder.Keys.Holds.Text;
import dev.pellucid.engine.larder.LabelRules.DayOrder;
import java.util.Arrays;
import java.util.Optional;

/** Every key of a file of {@code label/}. */
final class LabelVocabulary {
  private static final Holds MEASURE = new Text("^" + Vocabulary.FIGURE + "(\\s*\\S+)?$");
  private static final Holds PART =
      new Text("^(" + Vocabulary.FIGURE + " / X \\+ )?" + Vocabulary.FIGURE + "\\s*%$");
  private static final Holds TIMES = new Text("^" + Vocabulary.FIGURE + "$");

  static final Keys BAND =
      Keys.of(
          "a band",
          may("under", MEASURE, "the end of the band: declared figures below it"),
          may("absolute", MEASURE, "the difference that is taken"),
          may("relative", PART, "the part of the declared figure: 12.5 %, or 20 / X + 2 %"),
          may("no-limit", Vocabulary.YES, "any difference is taken"));

  private static final Holds BANDS = new ListOf(new Block(BAND));

  static final Keys TOLERANCE =
      Keys.of(
          "a tolerance",
          must("constituents", Vocabulary.WORDS, "the nutrients it is for"),
          must("below", BANDS, "what is taken below the label, by bands of the declared figure"),
          may("above", BANDS, "what is taken above the label"),
          may("above-times", TIMES, "above the label, so many times what is taken below it"));

  static final Keys COMPULSORY =
      Keys.of(
          "a block of what must be declared",
          must("constituents", Vocabulary.WORDS, "the nutrients to declare"),
          may("above", Vocabulary.AMOUNT, "only where the feed holds more than this"),
          Vocabulary.FOR_SPECIES);

  static final Keys WORDS =
      new Keys(
          "a block of words",
          Arrays.stream(LabelWord.values())
              .map(word -> may(word.key(), Vocabulary.TEXT, "in place of: " + word.ours()))
              .toList(),
          Optional.empty());

  static final Keys LABEL =
      Keys.of(
          "a set of label rules",
          must("name", Vocabulary.TEXT, "its name for people"),
          may("jurisdiction", new Text("^[A-Z]{2,8}$"), "whose rules they are"),
          Vocabulary.SOURCE,
          must("rounding", Vocabulary.AMOUNT, "the part of a tolerance that rounding may take"),
          must("tolerances", new ListOf(new Block(TOLERANCE)), "how far an analysis may be off"),
          may("compulsory", new ListOf(new Block(COMPULSORY)), "what a label must tell"),
          may("additives", new OneOf(AdditivesStand.WORDS), "where additives stand"),
          may("days", new OneOf(Vocabulary.words(DayOrder.values())), "how a day is written"),
          may("words", new Block(WORDS), "the words on the bag"),
          may("storage", Vocabulary.TEXTS, "how the bag is kept"),
          may("cautions", Vocabulary.TEXTS, "what the bag warns of"));

  static final Keys ADDITIVE =
      Keys.of(
          "an additive",
          must("functional-group", Vocabulary.TEXT, "what it is for, as the label says it"),
          may("number", Vocabulary.TEXT, "its identification number"),
          may("nutrient", Vocabulary.WORD, "the nutrient that its amount is told in"),
          Vocabulary.SOURCE);

  private LabelVocabulary() {}

  /** Where additives stand on a label. */
  enum AdditivesStand {
    APART,
    AMONG_INGREDIENTS;

    static final java.util.List<String> WORDS = Vocabulary.words(values());
  }
}
