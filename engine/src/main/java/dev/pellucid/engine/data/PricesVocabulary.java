package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** Every key of a file of {@code prices/}. */
final class PricesVocabulary {
  static final Keys PRICE_ENTRIES_KEYS =
      Keys.of("a list of prices").orElse("the name of an ingredient", AMOUNT);

  static final Key<Text> FROM = must("from", DAY, "the day from which the prices hold");
  static final Key<Block> PRICES =
      must("prices", new Block(PRICE_ENTRIES_KEYS), "money per kg or t");

  static final Keys PRICES_KEYS = Keys.of("a file of prices", FROM, SOURCE, PRICES);

  private PricesVocabulary() {}
}
