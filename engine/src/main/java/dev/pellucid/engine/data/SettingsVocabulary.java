package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.AMOUNT;
import static dev.pellucid.engine.data.Vocabulary.TEXT;
import static dev.pellucid.engine.data.Vocabulary.WORD;

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

  static final Key<Text> LAW_KEPT_IN =
      may("law-kept-in", AMOUNT, "the part of all batches that is to keep a legal maximum");

  static final Keys SETTINGS_KEYS =
      Keys.of("pellucid.yaml", FORMAT, NAME, CURRENCY, JURISDICTION, PLANT, LABEL, LAW_KEPT_IN);

  private SettingsVocabulary() {}
}
