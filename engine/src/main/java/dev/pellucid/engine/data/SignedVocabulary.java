package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.TEXT;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;

/** The keys of what was done, found or decided. */
final class SignedVocabulary {
  static final Key<Text> DAY = must("day", Vocabulary.DAY, "when");
  static final Key<Text> BY = must("by", TEXT, "who did it, or says so");
  static final Key<Text> BECAUSE = must("because", TEXT, "the reason");
  static final Key<Text> MAY_BECAUSE = may("because", TEXT, "the reason");

  private SignedVocabulary() {}
}
