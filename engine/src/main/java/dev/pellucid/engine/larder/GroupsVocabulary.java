package dev.pellucid.engine.larder;

import static dev.pellucid.engine.larder.Vocabulary.TEXT;

/** The keys of {@code groups.yaml}, which are names alone. */
final class GroupsVocabulary {
  static final Keys GROUPS_KEYS = Keys.of("groups.yaml").orElse("the name of a group", TEXT);

  private GroupsVocabulary() {}
}
