package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;
import static dev.pellucid.engine.data.Vocabulary.DAY;
import static dev.pellucid.engine.data.Vocabulary.TEXT;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Source.Reliability;

/** Every key of {@code sources.yaml}. */
final class SourcesVocabulary {
  static final Key<Named<Reliability>> STANDING =
      must("standing", new Named<>(Reliability.class), "how far it can be trusted");
  static final Key<Text> CITE = must("cite", TEXT, "the source in words");
  static final Key<Text> ADDRESS = may("address", TEXT, "where it can be read");
  static final Key<Text> READ = may("read", DAY, "the day on which it was read");
  static final Key<Text> LICENCE = may("licence", TEXT, "the terms of the data");

  static final Key<Text> ENDS =
      may("ends", DAY, "the last day of what an act authorises, as the act tells it");
  static final Key<Text> END_LOOKED_UP =
      may("end-looked-up", DAY, "the day on which somebody looked up what became of it since");
  static final Key<Text> END_FOUND = may("end-found", TEXT, "what was found, and where");

  static final Keys SOURCE_ENTRY_KEYS =
      Keys.of("a source", STANDING, CITE, ADDRESS, READ, LICENCE, ENDS, END_LOOKED_UP, END_FOUND);

  static final Keys SOURCES_KEYS =
      Keys.of("sources.yaml").orElse("the name of a source", new Block(SOURCE_ENTRY_KEYS));

  private SourcesVocabulary() {}
}
