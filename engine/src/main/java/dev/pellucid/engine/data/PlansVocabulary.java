package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.FIGURE;
import static dev.pellucid.engine.data.Vocabulary.NONE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;

/** Every key of a file of {@code plans/}. */
final class PlansVocabulary {
  static final String STORE = "store";

  static final Key<Text> RECIPE = must("recipe", TEXT, "the code of the feed");
  static final Key<Text> QUANTITY = must("quantity", AMOUNT, "how much of it, in the bags");
  static final Key<Text> BY = must("by", DAY, "the day by which it is made");

  static final Keys FEED_KEYS = Keys.of("a feed of a plan", RECIPE, QUANTITY, BY);

  static final Keys AVAILABLE_KEYS =
      Keys.of("what is available", List.of())
          .orElse(
              "an ingredient that is short",
              new Text("^(" + STORE + "|" + NONE + "|" + FIGURE + "\\s*\\S+)$"));

  static final Key<ListOf<Block>> FEEDS =
      must("feeds", new ListOf<>(new Block(FEED_KEYS)), "what is wanted, one after the other");
  static final Key<Block> AVAILABLE =
      may(
          "available",
          new Block(AVAILABLE_KEYS),
          "how much can be had at most of what is short; all else can be bought");

  static final Keys PLANS_KEYS = Keys.of("a plan", FEEDS, AVAILABLE);

  private PlansVocabulary() {}
}
