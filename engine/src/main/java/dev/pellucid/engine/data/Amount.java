package dev.pellucid.engine.data;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Digits with or without a point and decimals, and behind them a unit: {@code 12.5 %}. There are
 * thousands of these in a folder, so they are told apart by hand.
 *
 * @param unit begins with a letter or its own sign, so that {@code 15,7 %} is no 15 of ",7 %"; none
 *     where the number stands alone
 */
record Amount(String number, @Nullable String unit) {

  /** Empty where a text is no such thing. */
  static Optional<Amount> of(String text) {
    int end = digitsEnd(text, 0);
    if (end == 0) {
      return Optional.empty();
    }
    if (end < text.length() && text.charAt(end) == '.') {
      int decimals = digitsEnd(text, end + 1);
      end = decimals > end + 1 ? decimals : end;
    }
    int start = end;
    while (start < text.length() && isWhite(text.charAt(start))) {
      start++;
    }
    String number = text.substring(0, end);
    if (start == text.length()) {
      return Optional.of(new Amount(number, null));
    }
    return isUnit(text, start)
        ? Optional.of(new Amount(number, text.substring(start)))
        : Optional.empty();
  }

  /** Whether number and unit together could be a number with an exponent. */
  boolean mayBeExponent() {
    return unit != null && (unit.charAt(0) == 'e' || unit.charAt(0) == 'E');
  }

  private static int digitsEnd(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  /** The word "to" opens the other end of a range, and a unit stands on one line. */
  private static boolean isUnit(String text, int start) {
    int first = text.codePointAt(start);
    boolean opens = first == '%' || first == '°' || first == '℃' || Character.isLetter(first);
    boolean range =
        text.startsWith("to", start)
            && start + 2 < text.length()
            && isWhite(text.charAt(start + 2));
    return opens && !range && isOnOneLine(text, start);
  }

  private static boolean isOnOneLine(String text, int start) {
    for (int i = start; i < text.length(); i++) {
      switch (text.charAt(i)) {
        case '\n', '\r', '\u0085', '\u2028', '\u2029' -> {
          return false;
        }
        default -> {}
      }
    }
    return true;
  }

  private static boolean isWhite(char c) {
    return c == ' ' || (c >= '\t' && c <= '\r');
  }
}
