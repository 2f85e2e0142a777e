package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.SOURCE;
import static dev.pellucid.engine.data.Vocabulary.TEXT;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** Every key of a file of {@code prices/}. */
final class PricesVocabulary {
  static final Keys PRICE_ENTRIES_KEYS =
      Keys.of("a list of prices").orElse("the name of an ingredient", AMOUNT);

  static final Key<Text> PACK = may("pack", AMOUNT, "the smallest pack that is sold");
  static final Key<Text> LEAD_TIME =
      may("lead-time", AMOUNT, "the days from the order to the gate");
  static final Key<Text> SUPPLIER = may("supplier", TEXT, "who sells it");

  static final Keys ORDERING_KEYS =
      Keys.of("how an ingredient is ordered", PACK, LEAD_TIME, SUPPLIER);

  static final Keys ORDERING_ENTRIES_KEYS =
      Keys.of("a block of ordering").orElse("the name of an ingredient", new Block(ORDERING_KEYS));

  static final Key<Text> FROM = must("from", DAY, "the day from which the prices hold");
  static final Key<Block> PRICES =
      must("prices", new Block(PRICE_ENTRIES_KEYS), "money per kg or t");

  static final Key<Block> ORDERING =
      may("ordering", new Block(ORDERING_ENTRIES_KEYS), "packs, lead times and who sells");

  static final Keys PRICES_KEYS = Keys.of("a file of prices", FROM, SOURCE, PRICES, ORDERING);

  private PricesVocabulary() {}
}
