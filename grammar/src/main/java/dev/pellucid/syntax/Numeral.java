package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.math.BigDecimal;

/** A number as it was written: {@code 2.50} stays {@code 2.50}. */
public record Numeral(String text, Span span) {
  /** The digits of a number that is no longer than this are a whole number that a double has. */
  private static final int SHORT = 15;

  /** Powers of ten, all of which a double has. */
  private static final double[] TENS = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14
  };

  /** The exact value. */
  public BigDecimal value() {
    return isShort() ? BigDecimal.valueOf(digits(), places()) : new BigDecimal(text);
  }

  /**
   * The double nearest to the value. Of a short number it is the quotient of two whole numbers that
   * a double has, for a quotient is rounded to the nearest.
   */
  public double nearest() {
    return isShort() ? digits() / TENS[places()] : new BigDecimal(text).doubleValue();
  }

  private boolean isShort() {
    return text.length() <= SHORT;
  }

  /** The digits as one whole number. */
  private long digits() {
    long digits = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '.') {
        digits = digits * 10 + (c - '0');
      }
    }
    return digits;
  }

  /** How many digits stand behind the point. */
  private int places() {
    int point = text.indexOf('.');
    return point < 0 ? 0 : text.length() - point - 1;
  }
}
