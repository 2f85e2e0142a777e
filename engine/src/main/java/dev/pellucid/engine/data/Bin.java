package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * A bin or tank that lots are put into on top of each other.
 *
 * @param emptied the days on which it was empty, in order
 */
public record Bin(String name, List<Located<LocalDate>> emptied) {
  private static final String SIGNS = "[^\\p{L}\\p{M}\\p{N}]+";

  public Bin {
    emptied = List.copyOf(emptied);
  }

  /**
   * The letters and digits of a name, by which bins are one: capitals, blanks and signs tell no two
   * apart, but between two digits, where 1-11 is not 11-1. A name of signs alone is as it stands.
   */
  public static String key(String name) {
    StringBuilder key = new StringBuilder();
    boolean gap = false;
    for (int letter : name.codePoints().toArray()) {
      if (isSign(letter)) {
        gap = true;
        continue;
      }
      if (gap && Character.isDigit(letter) && endsInDigit(key)) {
        key.append('-');
      }
      gap = false;
      key.appendCodePoint(letter);
    }
    return (key.isEmpty() ? name.strip() : key.toString()).toLowerCase(Locale.ROOT);
  }

  /** A letter may stand in two parts, as in scripts of India: the second is no sign. */
  private static boolean isSign(int letter) {
    int type = Character.getType(letter);
    return !Character.isLetterOrDigit(letter)
        && type != Character.NON_SPACING_MARK
        && type != Character.COMBINING_SPACING_MARK;
  }

  private static boolean endsInDigit(StringBuilder key) {
    return !key.isEmpty() && Character.isDigit(key.codePointBefore(key.length()));
  }

  /**
   * Whether two names that are not one differ only by what kind of thing it is, as {@code Bin B4}
   * and {@code B4} do, or {@code B4} and {@code 4}: by letters in front of the other name.
   */
  public static boolean mayBeOne(String name, String other) {
    return isLonger(name, other) || isLonger(other, name);
  }

  private static boolean isLonger(String name, String other) {
    String key = key(name);
    String end = key(other);
    String[] words = name.strip().split(SIGNS, 2);
    if (words.length == 2 && key(words[1]).equals(end)) {
      return isOfLetters(key(words[0]));
    }
    return !end.isEmpty()
        && key.length() > end.length()
        && key.endsWith(end)
        && Character.isDigit(end.codePointAt(0))
        && isOfLetters(key.substring(0, key.length() - end.length()));
  }

  private static boolean isOfLetters(String front) {
    return !front.isEmpty() && front.codePoints().noneMatch(Character::isDigit);
  }

  /**
   * Whether what came into it on one day may still be in it on another. Where it was emptied on
   * either of the two days, nobody can say what came first, so it may be.
   */
  public boolean mayHold(LocalDate received, LocalDate day) {
    return !received.isAfter(day)
        && emptied.stream()
            .noneMatch(one -> one.thing().isAfter(received) && one.thing().isBefore(day));
  }
}
