package dev.pellucid.engine.larder;

import static dev.pellucid.engine.larder.Keys.may;
import static dev.pellucid.engine.larder.Keys.must;
import static dev.pellucid.engine.larder.Vocabulary.DAY;
import static dev.pellucid.engine.larder.Vocabulary.TEXT;

import dev.pellucid.engine.larder.Keys.Holds.Block;
import dev.pellucid.engine.larder.Keys.Holds.Named;
import dev.pellucid.engine.larder.Keys.Holds.Text;
import dev.pellucid.engine.larder.Keys.Key;
import dev.pellucid.engine.larder.Source.Standing;

/** Every key of {@code sources.yaml}. */
final class SourcesVocabulary {
  static final Key<Named<Standing>> STANDING =
      must("standing", new Named<>(Standing.class), "how far it can be trusted");
  static final Key<Text> CITE = must("cite", TEXT, "the source in words");
  static final Key<Text> ADDRESS = may("address", TEXT, "where it can be read");
  static final Key<Text> READ = may("read", DAY, "the day on which it was read");
  static final Key<Text> LICENCE = may("licence", TEXT, "the terms of the data");

  static final Keys SOURCE_ENTRY_KEYS = Keys.of("a source", STANDING, CITE, ADDRESS, READ, LICENCE);

  static final Keys SOURCES_KEYS =
      Keys.of("sources.yaml").orElse("the name of a source", new Block(SOURCE_ENTRY_KEYS));

  private SourcesVocabulary() {}
}
