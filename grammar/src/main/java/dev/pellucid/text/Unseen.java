package dev.pellucid.text;

import java.lang.Character.UnicodeScript;
import java.util.Locale;
import java.util.Set;

/**
 * Characters that cannot be seen and that no file may hold, since with them a text is not what it
 * seems to be: control characters other than tab and line ends; marks that turn the direction of
 * writing; tag characters, which spell hidden words; one half of a character that a text stores in
 * two; letters and signs that leave no ink; and whatever else has no width. This is their only
 * definition, for recipes and for data, for what is read and for what is printed.
 *
 * <p>Some of them are part of the spelling of a language and do not deceive there. They may stand
 * where that language puts them and nowhere else:
 *
 * <ul>
 *   <li>U+200C and U+200D, which part and join letters, between two letters of one script that
 *       joins them, as in Persian, and behind the sign that takes a vowel away, as in Hindi,
 *       Sinhala and Malayalam. Names of the language have the letters a to z only, so none can hold
 *       one.
 *   <li>U+200B, which parts words, between letters of the scripts that write words without spaces:
 *       the space bar of a Khmer keyboard writes it.
 *   <li>one selector of a variant, behind a letter of a script that has variants, or a symbol.
 * </ul>
 *
 * <p>Flags that are spelt in tag characters and families that are joined from faces are refused
 * with the rest: no language needs them, and tag characters can hold a whole hidden sentence.
 */
public final class Unseen {
  private static final int PARTS_WORDS = 0x200B;
  private static final int PARTS_LETTERS = 0x200C;
  private static final int JOINS_LETTERS = 0x200D;

  private Unseen() {}

  /** Where the first of them stands at or after a place; -1 where there is none. */
  public static int find(String text, int from) {
    return find(text, from, text.length());
  }

  /** Where the first of them stands at or after a place and before another; -1 if none does. */
  public static int find(String text, int from, int to) {
    int at = from;
    while (at < to) {
      char c = text.charAt(at);
      if ((c >= ' ' && c < 0x7F) || c == '\n') {
        at++;
      } else if (isAt(text, at)) {
        return at;
      } else {
        at += Character.charCount(text.codePointAt(at));
      }
    }
    return -1;
  }

  /** How many units the character at a place has. */
  public static int length(String text, int at) {
    return Character.charCount(text.codePointAt(at));
  }

  /** {@code U+202E, right-to-left override}. */
  public static String named(int c) {
    String name = Character.getName(c);
    boolean half = Character.getType(c) == Character.SURROGATE;
    if (half) {
      return number(c) + ", half of a pair";
    }
    return name == null ? number(c) : number(c) + ", " + name.toLowerCase(Locale.ROOT);
  }

  /** The text with {@code <U+202E>} for each; line ends and tabs stay. */
  public static String shown(String text) {
    int at = find(text, 0);
    if (at < 0) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length() + 16);
    int from = 0;
    while (at >= 0) {
      out.append(text, from, at).append('<').append(number(text.codePointAt(at))).append('>');
      from = at + length(text, at);
      at = find(text, from);
    }
    return out.append(text, from, text.length()).toString();
  }

  /**
   * The text as {@link #shown} has it and on one line: a space for a tab, a sign for a line end.
   */
  public static String shownOnOneLine(String text) {
    if (isPlain(text)) {
      return text;
    }
    return shown(text).replace('\t', ' ').replace("\n", "<U+000A>").replace("\r", "<U+000D>");
  }

  /** Whether nothing but letters and signs of ASCII and spaces stand in a text. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c >= 0x7F) {
        return false;
      }
    }
    return true;
  }

  private static String number(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }

  private static boolean isAt(String text, int at) {
    int c = text.codePointAt(at);
    if (c == '\t' || c == '\n' || c == '\r' || !isUnseen(c)) {
      return false;
    }
    int after = at + Character.charCount(c);
    return switch (c) {
      case PARTS_WORDS -> !isBetween(text, at, after, Scripts.WITHOUT_SPACES);
      case PARTS_LETTERS, JOINS_LETTERS ->
          !isBetween(text, at, after, Scripts.JOINING) && !isBehindSilencer(text, at);
      default -> !isSelector(c) || !hasVariants(text, at);
    };
  }

  private static boolean isUnseen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      case Character.FORMAT -> !isSignOfNumber(c);
      case Character.UNASSIGNED -> isReservedForUnseen(c);
      default -> isFiller(c) || isSelector(c);
    };
  }

  /** Signs that stand before or round a number and can be seen, though Unicode has them here. */
  private static boolean isSignOfNumber(int c) {
    return (c >= 0x600 && c <= 0x605)
        || c == 0x6DD
        || c == 0x70F
        || c == 0x8E2
        || c == 0x110BD
        || c == 0x110CD;
  }

  /** No characters yet, or never; what they are to be has no width. */
  private static boolean isReservedForUnseen(int c) {
    return (c & 0xFFFE) == 0xFFFE
        || (c >= 0xFDD0 && c <= 0xFDEF)
        || c == 0x2065
        || (c >= 0xFFF0 && c <= 0xFFF8)
        || (c >= 0xE0000 && c <= 0xE0FFF);
  }

  /** Letters, marks and a pattern of Braille without ink. */
  private static boolean isFiller(int c) {
    return switch (c) {
      case 0x34F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x2800, 0x3164, 0xFFA0 -> true;
      default -> false;
    };
  }

  private static boolean isSelector(int c) {
    return (c >= 0xFE00 && c <= 0xFE0F)
        || (c >= 0x180B && c <= 0x180F)
        || (c >= 0xE0100 && c <= 0xE01EF);
  }

  private static boolean hasVariants(String text, int at) {
    if (at == 0) {
      return false;
    }
    int before = text.codePointBefore(at);
    return !isSelector(before)
        && (Scripts.WITH_VARIANTS.contains(UnicodeScript.of(before)) || isSymbol(before));
  }

  private static boolean isSymbol(int c) {
    int type = Character.getType(c);
    return c > 0x7F
        && (type == Character.OTHER_SYMBOL
            || type == Character.MATH_SYMBOL
            || type == Character.OTHER_PUNCTUATION);
  }

  private static boolean isBetween(String text, int at, int after, Set<UnicodeScript> scripts) {
    UnicodeScript before = scriptBefore(text, at);
    return scripts.contains(before)
        && after < text.length()
        && isLetterOrMark(text.codePointAt(after))
        && UnicodeScript.of(text.codePointAt(after)) == before;
  }

  /** The script of the letter before a place, over marks that go with letters of any script. */
  private static UnicodeScript scriptBefore(String text, int at) {
    int place = at;
    while (place > 0) {
      int c = text.codePointBefore(place);
      UnicodeScript script = UnicodeScript.of(c);
      if (!isLetterOrMark(c)) {
        return UnicodeScript.UNKNOWN;
      }
      if (script != UnicodeScript.INHERITED) {
        return script;
      }
      place -= Character.charCount(c);
    }
    return UnicodeScript.UNKNOWN;
  }

  /** Behind a virama, which Unicode's names tell; a letter that ends a word may be spelt so. */
  private static boolean isBehindSilencer(String text, int at) {
    if (at == 0 || !Scripts.JOINING.contains(UnicodeScript.of(text.codePointBefore(at)))) {
      return false;
    }
    String name = Character.getName(text.codePointBefore(at));
    return name != null && (name.contains("SIGN VIRAMA") || name.contains("SIGN AL-LAKUNA"));
  }

  private static boolean isLetterOrMark(int c) {
    return switch (Character.getType(c)) {
      case Character.OTHER_LETTER,
          Character.UPPERCASE_LETTER,
          Character.LOWERCASE_LETTER,
          Character.MODIFIER_LETTER,
          Character.NON_SPACING_MARK,
          Character.COMBINING_SPACING_MARK ->
          true;
      default -> false;
    };
  }
}
