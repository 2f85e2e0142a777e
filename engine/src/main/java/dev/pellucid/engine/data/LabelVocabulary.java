package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.FOR_SPECIES;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.TEXTS;
import static dev.pellucid.engine.data.Vocabulary.WORDS;
import static dev.pellucid.engine.data.Vocabulary.YES;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.LabelRules.DayOrder;
import dev.pellucid.engine.data.LabelRules.Must;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Every key of a file of {@code label/}. */
final class LabelVocabulary {
  private static final Text MEASURE = new Text("^" + Vocabulary.FIGURE + "(\\s*\\S+)?$");
  private static final Text PART =
      new Text("^(" + Vocabulary.FIGURE + " / X \\+ )?" + Vocabulary.FIGURE + "\\s*%$");
  private static final Text TIMES = new Text("^" + Vocabulary.FIGURE + "$");

  static final Key<Text> BAND_UNDER =
      may("under", MEASURE, "the end of the band: declared figures below it");
  static final Key<Text> BAND_ABSOLUTE = may("absolute", MEASURE, "the difference that is taken");
  static final Key<Text> BAND_RELATIVE =
      may("relative", PART, "the part of the declared figure: 12.5 %, or 20 / X + 2 %");
  static final Key<OneOf> BAND_NO_LIMIT = may("no-limit", YES, "any difference is taken");

  static final Keys BAND_KEYS =
      Keys.of("a band", BAND_UNDER, BAND_ABSOLUTE, BAND_RELATIVE, BAND_NO_LIMIT);

  static final Key<ListOf<Text>> TOLERANCE_CONSTITUENTS =
      must("constituents", WORDS, "the nutrients it is for");
  static final Key<ListOf<Block>> TOLERANCE_BELOW =
      must(
          "below",
          new ListOf<>(new Block(BAND_KEYS)),
          "what is taken below the label, by bands of the declared figure");
  static final Key<ListOf<Block>> TOLERANCE_ABOVE =
      may("above", new ListOf<>(new Block(BAND_KEYS)), "what is taken above the label");
  static final Key<Text> TOLERANCE_ABOVE_TIMES =
      may("above-times", TIMES, "above the label, so many times what is taken below it");

  static final Keys TOLERANCE_KEYS =
      Keys.of(
          "a tolerance",
          TOLERANCE_CONSTITUENTS,
          TOLERANCE_BELOW,
          TOLERANCE_ABOVE,
          TOLERANCE_ABOVE_TIMES);

  static final Key<ListOf<Text>> COMPULSORY_CONSTITUENTS =
      must("constituents", WORDS, "the nutrients to declare");
  static final Key<Text> COMPULSORY_ABOVE =
      may("above", AMOUNT, "only where the feed holds more than this");

  static final Keys COMPULSORY_KEYS =
      Keys.of(
          "a block of what must be declared",
          COMPULSORY_CONSTITUENTS,
          COMPULSORY_ABOVE,
          FOR_SPECIES);

  static final Key<Text> ARTICLE = must("article", TEXT, "where the law asks it");

  static final Key<ListOf<Named<Must>>> MUST_TELL_WHAT =
      must("what", new ListOf<>(new Named<>(Must.class)), "what the label must tell");

  static final Keys MUST_TELL_KEYS =
      Keys.of("a row of what a label must tell", MUST_TELL_WHAT, ARTICLE, SOURCE);

  static final Key<ListOf<Text>> DECLARED_NUTRIENTS =
      may("nutrients", WORDS, "those that bring one of these nutrients");
  static final Key<ListOf<Text>> DECLARED_GROUPS =
      may("functional-groups", TEXTS, "those of one of these functional groups");

  static final Keys DECLARED_KEYS =
      Keys.of(
          "a row of additives that must be told",
          DECLARED_NUTRIENTS,
          DECLARED_GROUPS,
          ARTICLE,
          SOURCE);

  static final Key<ListOf<Text>> HOLDS =
      must("holds", WORDS, "the groups and ingredients that bring it on the bag");
  static final Key<ListOf<Text>> BUT_NOT =
      may("but-not", WORDS, "groups and ingredients of these that do not");
  static final Key<Text> SAID = must("words", TEXT, "what the bag says");

  static final Keys SAYING_KEYS =
      Keys.of(
          "a sentence for certain ingredients", HOLDS, BUT_NOT, FOR_SPECIES, SAID, ARTICLE, SOURCE);

  static final Keys MODIFIED_KEYS =
      Keys.of("a row of genetically modified plants", HOLDS, SAID, ARTICLE, SOURCE);

  private static final Map<LabelWord, Key<Text>> WORD_KEYS = wordKeys();

  static final Keys WORDS_KEYS = Keys.of("a block of words", List.copyOf(WORD_KEYS.values()));

  static final Key<Text> NAME = must("name", TEXT, "its name for people");
  static final Key<Text> JURISDICTION =
      may("jurisdiction", new Text("^[A-Z]{2,8}$"), "whose rules they are");
  static final Key<Text> ROUNDING =
      must("rounding", AMOUNT, "the part of a tolerance that rounding may take");
  static final Key<ListOf<Block>> TOLERANCES =
      must("tolerances", new ListOf<>(new Block(TOLERANCE_KEYS)), "how far an analysis may be off");
  static final Key<ListOf<Block>> COMPULSORY =
      may("compulsory", new ListOf<>(new Block(COMPULSORY_KEYS)), "what a label must tell");
  static final Key<Named<AdditivesStand>> ADDITIVES =
      may("additives", new Named<>(AdditivesStand.class), "where additives stand");
  static final Key<OneOf> OTHER_AMOUNTS =
      may("other-amounts", YES, "additives that need not be told show their amount too");
  static final Key<ListOf<Block>> MUST_TELL =
      may(
          "must-tell",
          new ListOf<>(new Block(MUST_TELL_KEYS)),
          "what else a label must tell, which stands in no recipe");
  static final Key<ListOf<Block>> DECLARED_ADDITIVES =
      may(
          "declared-additives",
          new ListOf<>(new Block(DECLARED_KEYS)),
          "additives that must be told with their amount");
  static final Key<ListOf<Block>> SAYINGS =
      may(
          "sentences",
          new ListOf<>(new Block(SAYING_KEYS)),
          "what the law asks where certain ingredients are in");
  static final Key<ListOf<Block>> MODIFIED =
      may(
          "genetically-modified",
          new ListOf<>(new Block(MODIFIED_KEYS)),
          "words behind the name of what comes of such plants");
  static final Key<Named<DayOrder>> DAYS =
      may("days", new Named<>(DayOrder.class), "how a day is written");
  static final Key<Block> BAG_WORDS = may("words", new Block(WORDS_KEYS), "the words on the bag");
  static final Key<ListOf<Text>> STORAGE = may("storage", TEXTS, "how the bag is kept");
  static final Key<ListOf<Text>> CAUTIONS = may("cautions", TEXTS, "what the bag warns of");

  static final Keys LABEL_KEYS =
      Keys.of(
          "a set of label rules",
          NAME,
          JURISDICTION,
          SOURCE,
          ROUNDING,
          TOLERANCES,
          COMPULSORY,
          MUST_TELL,
          ADDITIVES,
          DECLARED_ADDITIVES,
          OTHER_AMOUNTS,
          SAYINGS,
          MODIFIED,
          DAYS,
          BAG_WORDS,
          STORAGE,
          CAUTIONS);

  private LabelVocabulary() {}

  /** The key of a word on the bag. */
  static Key<Text> word(LabelWord word) {
    return Objects.requireNonNull(WORD_KEYS.get(word), "no key for it");
  }

  private static Map<LabelWord, Key<Text>> wordKeys() {
    Map<LabelWord, Key<Text>> keys = new EnumMap<>(LabelWord.class);
    for (LabelWord word : LabelWord.values()) {
      keys.put(word, may(word.key(), TEXT, "in place of: " + word.ours()));
    }
    return Collections.unmodifiableMap(keys);
  }

  /** Where additives stand on a label. */
  enum AdditivesStand {
    APART,
    AMONG_INGREDIENTS
  }
}
