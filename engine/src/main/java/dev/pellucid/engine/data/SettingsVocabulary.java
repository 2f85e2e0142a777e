package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.WORD;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.List;

/** Every key of {@code pellucid.yaml}. */
final class SettingsVocabulary {
  static final Key<OneOf> FORMAT =
      must("format", new OneOf(List.of(SettingsReader.FORMAT)), "the format of the folder");
  static final Key<Text> NAME = must("name", TEXT, "what the folder is called on sheets");
  static final Key<Text> CURRENCY =
      must("currency", new Text("^[A-Z]{3}$"), "three capital letters, as in EUR");
  static final Key<Text> JURISDICTION =
      must("jurisdiction", new Text("^(none|[A-Z]{2,8})$"), "whose law applies, or none");
  static final Key<Text> PLANT =
      may("plant", WORD, "the plant that makes the feed: a file of plant/");
  static final Key<Text> LABEL = may("label", WORD, "the rules of the bag label: a file of label/");

  static final Key<OneOf> DATA =
      may("data", new OneOf(List.of(SettingsReader.OWN)), "own, where nothing is to come along");

  static final Key<Text> LAW_KEPT_IN =
      may("law-kept-in", AMOUNT, "the part of all batches that is to keep a legal maximum");

  static final Key<Text> MAKER_NAME = must("name", TEXT, "the name or business name on the bag");
  static final Key<Text> MAKER_ADDRESS = must("address", TEXT, "the address on the bag");
  static final Key<Text> MAKER_APPROVAL_NUMBER =
      may("approval-number", TEXT, "the number of the mill as the authority gave it, or none");

  static final Keys MAKER_KEYS =
      Keys.of("a maker", MAKER_NAME, MAKER_ADDRESS, MAKER_APPROVAL_NUMBER);

  static final Key<Block> MAKER =
      may("maker", new Block(MAKER_KEYS), "who makes the feed and answers for its label");

  static final Keys MADE_KEYS =
      Keys.of("what is made in a month").orElse("the code of a recipe", AMOUNT);

  static final Key<Block> MADE_PER_MONTH =
      may("made-per-month", new Block(MADE_KEYS), "how much of each feed is made, as in 4 t");

  static final Keys SETTINGS_KEYS =
      Keys.of(
          "pellucid.yaml",
          FORMAT,
          NAME,
          CURRENCY,
          JURISDICTION,
          PLANT,
          LABEL,
          DATA,
          LAW_KEPT_IN,
          MAKER,
          MADE_PER_MONTH);

  private SettingsVocabulary() {}
}
