package dev.pellucid.engine.larder;

import java.util.List;
import java.util.Optional;

/**
 * The keys that one kind of mapping may have. Reading, the findings about keys and the schemas for
 * editors all follow from it.
 *
 * @param thing what such a mapping is, with its article: "an ingredient"
 * @param names the keys with a fixed name, in the order in which people write them
 * @param others what other keys are, where there may be others: "the name of a nutrient"
 */
record Keys(String thing, List<Key> names, Optional<Others> others) {
  Keys {
    names = List.copyOf(names);
  }

  /** One key. */
  record Key(String name, boolean required, Holds holds, String meaning) {}

  /** Keys that are names of things. */
  record Others(String what, Holds holds) {}

  /** What stands behind a key. */
  sealed interface Holds {
    /** Any text; a pattern where only some has a meaning. */
    record Text(String pattern) implements Holds {}

    /** One of some words. */
    record OneOf(List<String> words) implements Holds {
      public OneOf {
        words = List.copyOf(words);
      }
    }

    /** A list. */
    record ListOf(Holds item) implements Holds {}

    /** A block with keys of its own. */
    record Block(Keys keys) implements Holds {}
  }

  static Keys of(String thing, Key... names) {
    return new Keys(thing, List.of(names), Optional.empty());
  }

  Keys orElse(String what, Holds holds) {
    return new Keys(thing, names, Optional.of(new Others(what, holds)));
  }

  static Key must(String name, Holds holds, String meaning) {
    return new Key(name, true, holds, meaning);
  }

  static Key may(String name, Holds holds, String meaning) {
    return new Key(name, false, holds, meaning);
  }

  boolean has(String name) {
    return names.stream().anyMatch(key -> key.name().equals(name));
  }

  List<String> words() {
    return names.stream().map(Key::name).toList();
  }
}
