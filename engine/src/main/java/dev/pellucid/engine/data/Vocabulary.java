package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.Keys.may;
import static dev.pellucid.engine.data.Keys.must;

import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.OneOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the keys of data files hold, and the keys that many kinds of file have. Each kind has a
 * class with all of its keys, in the order in which people write them.
 */
final class Vocabulary {
  static final String NAME = "[a-z][a-z0-9]*(-[a-z0-9]+)*";
  static final String NONE = "none";
  static final String NOT_KNOWN = "not-known";
  static final String FIGURE = "[0-9]{1,12}(\\.[0-9]{1,12})?";

  static final Text TEXT = new Text("");
  static final Text WORD = new Text("^" + NAME + "$");
  static final ListOf<Text> WORDS = new ListOf<>(WORD);
  static final ListOf<Text> TEXTS = new ListOf<>(TEXT);
  static final Text AMOUNT = new Text("^" + FIGURE + "\\s*\\S+$");
  static final Text AMOUNT_OR_NONE = new Text("^(" + NONE + "|" + FIGURE + "\\s*\\S+)$");
  static final Text RANGE = new Text("^" + FIGURE + " to " + FIGURE + "\\s*\\S+$");
  static final Text CONTENT = content(NONE);
  static final Text CONTENT_OR_NOT_KNOWN = content(NONE + "|" + NOT_KNOWN);
  static final OneOf YES = new OneOf(List.of("yes"));
  static final Text DAY = new Text("^[0-9]{4}-[0-9]{2}-[0-9]{2}$");

  static final Key<Text> SOURCE =
      must("source", WORD, "where the figures come from: a name of sources.yaml");

  static final Key<Text> FOR_SPECIES =
      may("species", WORD, "the species or group of species it is for");

  static final Text COUNT = new Text("^[1-9][0-9]{0,5}$");

  static final Key<Text> ANALYSES =
      may("analyses", COUNT, "how many analyses the figures and their spread rest on");

  private Vocabulary() {}

  /** A figure, with a spread or a bound, or one of some words. */
  private static Text content(String words) {
    return new Text(
        "^("
            + words
            + "|below "
            + FIGURE
            + "\\s*\\S+|"
            + FIGURE
            + "(\\s*(±|\\+/-)\\s*"
            + FIGURE
            + ")?\\s*\\S+)$");
  }

  /** Whether a text is as {@link #NAME} has it: {@code soybean-meal-48}. */
  static boolean isName(String text) {
    boolean inPart = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= 'a' && c <= 'z';
      boolean digit = c >= '0' && c <= '9';
      if (c == '-' ? !inPart : !letter && !(digit && i > 0)) {
        return false;
      }
      inPart = c != '-';
    }
    return inPart;
  }

  /** The words of an enum as files write them: lower case with hyphens. */
  static List<String> words(Enum<?>[] values) {
    List<String> words = new ArrayList<>(values.length);
    for (Enum<?> value : values) {
      words.add(word(value));
    }
    return words;
  }

  /** The word of one value of an enum. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The value of an enum that a word of {@link #words} means. */
  static <E extends Enum<E>> E named(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
