package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.COUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.TEXTS;
import static dev.pellucid.engine.data.Vocabulary.YES;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** Every key of a file of {@code batches/}. */
final class BatchVocabulary {
  private static final Text NUMBER =
      new Text("^[A-Z][A-Z0-9]*(-[A-Z0-9]+)*-[0-9]{4}-[0-9]{2}-[0-9]{2}-[1-9][0-9]{0,3}$");

  static final Key<Text> WEIGHED_LINE = must("line", TEXT, "the line of the recipe");
  static final Key<Text> WEIGHED_LOT =
      may("lot", TEXT, "the lot it was taken from, or the batch of a premix");
  static final Key<Text> WEIGHED_WEIGHT = may("weight", AMOUNT, "what was weighed");

  static final Key<Text> WEIGHED_BIN =
      may("bin", TEXT, "the bin it was taken from, where no lot can be told");

  static final Keys WEIGHED_KEYS =
      Keys.of("a weighed line", WEIGHED_LINE, WEIGHED_LOT, WEIGHED_BIN, WEIGHED_WEIGHT);

  static final Key<Text> FLUSH_LOT = may("lot", TEXT, "the lot of what was run through");

  static final Keys FLUSHED_KEYS =
      Keys.of(
          "a flush",
          SequenceVocabulary.FLUSH_QUANTITY,
          SequenceVocabulary.FLUSH_WITH,
          FLUSH_LOT,
          SequenceVocabulary.FLUSH_TO);

  static final Key<Text> CLEANED_HOW = must("how", TEXT, "how it was cleaned");

  static final Keys CLEANED_KEYS =
      Keys.of("a cleaned line", SignedVocabulary.DAY, SignedVocabulary.BY, CLEANED_HOW);

  static final Key<Text> MADE_FROM_COMMIT = may("commit", TEXT, "the commit that the sheet names");
  static final Key<Text> MADE_FROM_FINGERPRINT =
      may("fingerprint", TEXT, "the fingerprint that the sheet names");

  static final Keys MADE_FROM_KEYS =
      Keys.of("what it was made from", MADE_FROM_COMMIT, MADE_FROM_FINGERPRINT);

  static final Key<Text> NEW_SHARE_LINE = must("line", TEXT, "the line of the recipe");
  static final Key<Text> NEW_SHARE = must("share", AMOUNT, "its share in this batch");

  static final Keys NEW_SHARE_KEYS = Keys.of("a share", NEW_SHARE_LINE, NEW_SHARE);

  static final Key<ListOf<Block>> REBALANCED_SHARES =
      must("shares", new ListOf<>(new Block(NEW_SHARE_KEYS)), "one for each line that changes");

  static final Keys REBALANCED_KEYS =
      Keys.of(
          "a re-balanced batch",
          SignedVocabulary.DAY,
          SignedVocabulary.BY,
          SignedVocabulary.MAY_BECAUSE,
          REBALANCED_SHARES);

  static final Key<Text> FINES_WEIGHT = must("weight", AMOUNT, "what the sieve took out");
  static final Key<Text> FINES_TO = must("to", TEXT, "where it went: a batch, or in words");

  static final Keys FINES_KEYS = Keys.of("fines", FINES_WEIGHT, FINES_TO);

  static final Key<Text> SAMPLE_WEIGHT = must("weight", AMOUNT, "what was put aside");
  static final Key<Text> SAMPLE_PLACE = must("place", TEXT, "where it is kept");
  static final Key<Text> SAMPLE_UNTIL = may("until", DAY, "the last day on which it is kept");

  static final Keys SAMPLE_KEYS =
      Keys.of("a retained sample", SAMPLE_WEIGHT, SAMPLE_PLACE, SAMPLE_UNTIL);

  static final Key<Text> BEGUN_WITH_BATCH =
      must("batch", NUMBER, "the batch whose part bag was filled up");
  static final Key<Text> BEGUN_WITH_WEIGHT = must("weight", AMOUNT, "what was in that bag");

  static final Keys BEGUN_WITH_KEYS = Keys.of("a part bag", BEGUN_WITH_BATCH, BEGUN_WITH_WEIGHT);

  static final Key<Text> READING_AT = must("at", AMOUNT, "time since the start");
  static final Key<Text> READING_MOISTURE = may("moisture", AMOUNT, "what the meter said");
  static final Key<Text> READING_TRAY = may("tray", AMOUNT, "what the tray weighed, net");

  static final Keys READING_KEYS = Keys.of("a reading", READING_AT, READING_MOISTURE, READING_TRAY);

  static final Key<Text> DRYING_BEFORE = must("before", AMOUNT, "the moisture when it was loaded");
  static final Key<Text> DRYING_LOAD = may("load", AMOUNT, "what was on the tray, net");
  static final Key<ListOf<Block>> DRYING_READINGS =
      must("readings", new ListOf<>(new Block(READING_KEYS)), "in the order of time");

  static final Keys DRYING_KEYS = Keys.of("drying", DRYING_BEFORE, DRYING_LOAD, DRYING_READINGS);

  static final Key<Text> BAGS_FULL = may("full", COUNT, "how many are full");
  static final Key<Text> BAGS_OF = may("of", AMOUNT, "what a full one holds");
  static final Key<Text> BAGS_REST = may("rest", AMOUNT, "what is in the last one");

  static final Key<Block> BAGS_BEGUN_WITH =
      may(
          "begun-with",
          new Block(BEGUN_WITH_KEYS),
          "the part bag of an earlier batch that was filled up first; it counts in full");

  static final Keys BAGS_KEYS = Keys.of("bags", BAGS_FULL, BAGS_OF, BAGS_REST, BAGS_BEGUN_WITH);

  static final Key<Text> MIXER_TRACER = may("tracer", TEXT, "what was looked for");
  static final Key<ListOf<Text>> MIXER_READINGS =
      must("readings", TEXTS, "one for each sample, ten of them if you can");

  static final Keys MIXER_TEST_KEYS = Keys.of("a mixer test", MIXER_TRACER, MIXER_READINGS);

  static final Key<Text> SIEVE_ROW_OPENING = must("opening", AMOUNT, "its opening");
  static final Key<Text> SIEVE_ROW_MASS = must("mass", AMOUNT, "what stayed on it");

  static final Keys SIEVE_ROW_KEYS = Keys.of("a sieve", SIEVE_ROW_OPENING, SIEVE_ROW_MASS);

  static final Key<Text> SIEVE_CHARGE = may("charge", AMOUNT, "what went onto the stack");
  static final Key<ListOf<Block>> SIEVE_ROWS =
      must("rows", new ListOf<>(new Block(SIEVE_ROW_KEYS)), "one for each sieve");
  static final Key<Text> SIEVE_PAN = may("pan", AMOUNT, "what fell through all of them");

  static final Keys SIEVE_KEYS = Keys.of("a sieve analysis", SIEVE_CHARGE, SIEVE_ROWS, SIEVE_PAN);

  static final Key<Text> DURABILITY_BEFORE =
      must("before", AMOUNT, "pellets that went into the box");
  static final Key<Text> DURABILITY_AFTER = must("after", AMOUNT, "pellets left on the sieve");

  static final Keys DURABILITY_KEYS = Keys.of("durability", DURABILITY_BEFORE, DURABILITY_AFTER);

  static final Key<Named<BatchRecord.Decision>> RELEASE_DECISION =
      must("decision", new Named<>(BatchRecord.Decision.class), "what becomes of it");
  static final Key<Text> RELEASE_BY = must("by", TEXT, "who decided");
  static final Key<Text> RELEASE_DAY = may("day", DAY, "when");
  static final Key<Text> RELEASE_BECAUSE = may("because", TEXT, "the reason");

  static final Keys RELEASE_KEYS =
      Keys.of("a release", RELEASE_DECISION, RELEASE_BY, RELEASE_DAY, RELEASE_BECAUSE);

  static final Key<Text> SIZE =
      must("size", AMOUNT, "the kg planned, weighed, before overage and water");
  static final Key<Block> MADE_FROM =
      may("made-from", new Block(MADE_FROM_KEYS), "the state of the folder, as the sheet names it");
  static final Key<Block> REBALANCED =
      may(
          "rebalanced",
          new Block(REBALANCED_KEYS),
          "shares of this batch in place of those of the recipe");
  static final Key<Block> FINES = may("fines", new Block(FINES_KEYS), "what was sieved out");
  static final Key<ListOf<Block>> SAMPLES =
      may("samples", new ListOf<>(new Block(SAMPLE_KEYS)), "what is kept of it, and where");
  static final Key<Text> AFTER =
      may("after", NUMBER, "the batch that was made on the same line before it");
  static final Key<Block> FLUSHED =
      may("flushed", new Block(FLUSHED_KEYS), "what was run through between the two");
  static final Key<Block> CLEANED =
      may("cleaned", new Block(CLEANED_KEYS), "that the line was cleaned between the two");
  static final Key<ListOf<Block>> WEIGHED =
      may("weighed", new ListOf<>(new Block(WEIGHED_KEYS)), "line by line");
  static final Key<Text> WATER = may("water", AMOUNT, "water added to the mix");
  static final Key<Block> MIXER_TEST =
      may("mixer-test", new Block(MIXER_TEST_KEYS), "how even the mix was");
  static final Key<Block> SIEVE = may("sieve", new Block(SIEVE_KEYS), "how fine the grind was");
  static final Key<Block> DRYING =
      may("drying", new Block(DRYING_KEYS), "how the moisture came down");
  static final Key<Block> DURABILITY =
      may("durability", new Block(DURABILITY_KEYS), "how hard the pellets are");
  static final Key<Block> BAGS = may("bags", new Block(BAGS_KEYS), "what was filled");
  static final Key<ListOf<Text>> DEVIATIONS =
      may("deviations", TEXTS, "what went otherwise than planned");
  static final Key<Block> RELEASE =
      may("release", new Block(RELEASE_KEYS), "whether it may be fed");
  static final Key<OneOf> CLOSED =
      may("closed", YES, "it is fed or gone: kept for the trace, no longer judged");

  static final Keys BATCH_KEYS =
      Keys.of(
          "a batch record",
          SIZE,
          MADE_FROM,
          REBALANCED,
          AFTER,
          FLUSHED,
          CLEANED,
          WEIGHED,
          WATER,
          MIXER_TEST,
          SIEVE,
          DRYING,
          DURABILITY,
          FINES,
          BAGS,
          SAMPLES,
          DEVIATIONS,
          RELEASE,
          SinceVocabulary.RESULTS,
          SinceVocabulary.DELIVERED,
          SinceVocabulary.RETURNED,
          SinceVocabulary.DISPOSED,
          SinceVocabulary.COUNTED,
          SinceVocabulary.COMPLAINTS,
          SinceVocabulary.DECIDED_LATER,
          SinceVocabulary.CORRECTIONS,
          CLOSED);

  private BatchVocabulary() {}
}
