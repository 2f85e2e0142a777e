package dev.pellucid.engine.data;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The keys that one kind of mapping may have. Reading, the findings about keys and the schemas for
 * editors all follow from it.
 *
 * @param thing what such a mapping is, with its article: "an ingredient"
 * @param names the keys with a fixed name, in the order in which people write them
 * @param others what other keys are, where there may be others: "the name of a nutrient"
 */
record Keys(String thing, List<Key<?>> names, Optional<Others> others) {
  Keys {
    names = List.copyOf(names);
  }

  /**
   * One key. Who reads a mapping asks by the key and not by its name, so that nothing is asked for
   * that may not stand there, and nothing as another thing than it is.
   */
  record Key<H extends Holds>(String name, boolean required, H holds, String meaning) {}

  /** Keys that are names of things. */
  record Others(String what, Holds holds) {}

  /** What stands behind a key. */
  sealed interface Holds {
    /** Applies the one of these that is for its kind. */
    <R> R byKind(
        Function<Text, R> text,
        Function<Words, R> words,
        Function<ListOf<?>, R> list,
        Function<Block, R> block);

    /** One piece of text. */
    sealed interface OneText extends Holds {}

    /** Any text; a pattern where only some has a meaning. */
    record Text(String pattern) implements OneText {
      @Override
      public <R> R byKind(
          Function<Text, R> text,
          Function<Words, R> words,
          Function<ListOf<?>, R> list,
          Function<Block, R> block) {
        return text.apply(this);
      }
    }

    /** One of some words. */
    sealed interface Words extends OneText {
      List<String> words();

      @Override
      default <R> R byKind(
          Function<Text, R> text,
          Function<Words, R> words,
          Function<ListOf<?>, R> list,
          Function<Block, R> block) {
        return words.apply(this);
      }
    }

    /** One of a list. */
    record OneOf(List<String> words) implements Words {
      public OneOf {
        words = List.copyOf(words);
      }
    }

    /** The word for one value of an enum. */
    record Named<E extends Enum<E>>(Class<E> type) implements Words {
      @Override
      public List<String> words() {
        return Vocabulary.words(type.getEnumConstants());
      }
    }

    /** A list. */
    record ListOf<I extends Holds>(I item) implements Holds {
      @Override
      public <R> R byKind(
          Function<Text, R> text,
          Function<Words, R> words,
          Function<ListOf<?>, R> list,
          Function<Block, R> block) {
        return list.apply(this);
      }
    }

    /** A block with keys of its own. */
    record Block(Keys keys) implements Holds {
      @Override
      public <R> R byKind(
          Function<Text, R> text,
          Function<Words, R> words,
          Function<ListOf<?>, R> list,
          Function<Block, R> block) {
        return block.apply(this);
      }
    }
  }

  static Keys of(String thing, Key<?>... names) {
    return of(thing, Arrays.asList(names));
  }

  static Keys of(String thing, List<? extends Key<?>> names) {
    return new Keys(thing, List.copyOf(names), Optional.empty());
  }

  Keys orElse(String what, Holds holds) {
    return new Keys(thing, names, Optional.of(new Others(what, holds)));
  }

  static <H extends Holds> Key<H> must(String name, H holds, String meaning) {
    return new Key<>(name, true, holds, meaning);
  }

  static <H extends Holds> Key<H> may(String name, H holds, String meaning) {
    return new Key<>(name, false, holds, meaning);
  }

  boolean has(String name) {
    for (Key<?> key : names) {
      if (key.name().equals(name)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a key is one of these: each is declared once, so it is the very object or none. */
  @SuppressWarnings("ReferenceEquality")
  boolean has(Key<?> key) {
    for (Key<?> one : names) {
      if (one == key) {
        return true;
      }
    }
    return false;
  }

  List<String> words() {
    List<String> words = new ArrayList<>(names.size());
    for (Key<?> key : names) {
      words.add(key.name());
    }
    return words;
  }
}
