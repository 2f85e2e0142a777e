package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Vocabulary.TEXT;

/** The keys of {@code groups.yaml}, which are names alone. */
final class GroupsVocabulary {
  static final Keys GROUPS_KEYS = Keys.of("groups.yaml").orElse("the name of a group", TEXT);

  private GroupsVocabulary() {}
}
