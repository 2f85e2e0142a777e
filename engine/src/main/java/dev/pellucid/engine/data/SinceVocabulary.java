package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.SignedVocabulary.BECAUSE;
import static dev.pellucid.engine.data.SignedVocabulary.BY;
import static dev.pellucid.engine.data.SignedVocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.CONTENT;
import static dev.pellucid.engine.data.Vocabulary.COUNT;
import static dev.pellucid.engine.data.Vocabulary.TEXT;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;

/** The keys of a batch record that may be written after the batch was released. */
final class SinceVocabulary {
  static final Key<Text> AMOUNT_BAGS = may("bags", COUNT, "how many full bags");
  static final Key<Text> AMOUNT_WEIGHT =
      may("weight", AMOUNT, "what is loose, or in a bag that is not full");

  static final Key<Text> TO = must("to", TEXT, "who got it");
  static final Key<Text> FROM = must("from", TEXT, "who gave it back");
  static final Key<Text> NOTE = may("note", TEXT, "the number of the delivery note");

  static final Keys DELIVERED_KEYS =
      Keys.of("a delivery", DAY, BY, TO, AMOUNT_BAGS, AMOUNT_WEIGHT, NOTE);
  static final Keys RETURNED_KEYS =
      Keys.of("a return", DAY, BY, FROM, AMOUNT_BAGS, AMOUNT_WEIGHT, NOTE, BECAUSE);
  static final Keys DISPOSED_KEYS =
      Keys.of("what was disposed of", DAY, BY, AMOUNT_BAGS, AMOUNT_WEIGHT, BECAUSE);
  static final Keys COUNTED_KEYS = Keys.of("a count", DAY, BY, AMOUNT_BAGS, AMOUNT_WEIGHT);

  static final Key<Text> COMPLAINT_FROM = must("from", TEXT, "who complained");
  static final Key<Text> COMPLAINT_ABOUT = must("about", TEXT, "what about");
  static final Keys COMPLAINT_KEYS =
      Keys.of("a complaint", DAY, BY, COMPLAINT_FROM, COMPLAINT_ABOUT);

  static final Keys RESULT_KEYS =
      Keys.of("a result", DAY, BY).orElse("the name of a nutrient", CONTENT);

  static final Key<Named<BatchRecord.Decision>> DECISION =
      must("decision", new Named<>(BatchRecord.Decision.class), "what becomes of it from then on");
  static final Keys DECIDED_KEYS = Keys.of("a later decision", DAY, BY, DECISION, BECAUSE);

  static final Key<Text> CORRECTION_LINE =
      may("line", TEXT, "the line whose figure was changed, or the key");
  static final Key<Text> CORRECTION_WAS = may("was", TEXT, "what stood there before");
  static final Keys CORRECTION_KEYS =
      Keys.of("a correction", DAY, BY, CORRECTION_LINE, CORRECTION_WAS, BECAUSE);

  static final Key<ListOf<Block>> RESULTS =
      may("results", new ListOf<>(new Block(RESULT_KEYS)), "what a laboratory found in the feed");
  static final Key<ListOf<Block>> DELIVERED =
      may("delivered", new ListOf<>(new Block(DELIVERED_KEYS)), "who got it");
  static final Key<ListOf<Block>> RETURNED =
      may("returned", new ListOf<>(new Block(RETURNED_KEYS)), "what came back");
  static final Key<ListOf<Block>> DISPOSED =
      may("disposed", new ListOf<>(new Block(DISPOSED_KEYS)), "what was thrown away");
  static final Key<ListOf<Block>> COUNTED =
      may("counted", new ListOf<>(new Block(COUNTED_KEYS)), "what was found in the store");
  static final Key<ListOf<Block>> COMPLAINTS =
      may("complaints", new ListOf<>(new Block(COMPLAINT_KEYS)), "what its users say");
  static final Key<ListOf<Block>> DECIDED_LATER =
      may("decided-later", new ListOf<>(new Block(DECIDED_KEYS)), "what was decided since");
  static final Key<ListOf<Block>> CORRECTIONS =
      may(
          "corrections",
          new ListOf<>(new Block(CORRECTION_KEYS)),
          "why something was changed after the release");

  private static final List<Key<?>> ALL =
      List.of(
          RESULTS, DELIVERED, RETURNED, DISPOSED, COUNTED, COMPLAINTS, DECIDED_LATER, CORRECTIONS);

  private SinceVocabulary() {}

  /** Whether a key is one of these. */
  static boolean isLater(String key) {
    return ALL.stream().anyMatch(one -> one.name().equals(key));
  }
}
