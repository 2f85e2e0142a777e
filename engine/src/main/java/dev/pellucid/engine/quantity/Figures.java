package dev.pellucid.engine.quantity;

import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Figures in words: rounded for reading, never for reckoning.
 *
 * <p>Rounding is half up on the decimal figure that is nearest to the value within 15 digits, so
 * that 0.285 becomes 0.29 although its double lies just below.
 */
public final class Figures {
  private static final MathContext READABLE = new MathContext(15, RoundingMode.HALF_EVEN);
  private static final int MOST_DECIMALS = 9;
  private static final int DIGITS = 4;
  private static final double MOST_READ = 1e15;

  /** Each exact, as are all powers of ten up to the 22nd. */
  private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

  /** Below it a figure of 15 digits, scaled, is off by less than {@link #NEAR_A_TIE}. */
  private static final double MOST_SCALED = 1e11;

  private static final double NEAR_A_TIE = 1e-3;

  private Figures() {}

  /** With so many decimals; {@code ∞} for a quotient over nothing. */
  public static String fixed(double value, int decimals) {
    return Double.isInfinite(value) ? "∞" : rounded(value, decimals).toPlainString();
  }

  /**
   * {@link #fixed}, or with as many decimals more as it takes to show that there is something, at
   * most nine.
   */
  public static String visible(double value, int decimals) {
    int enough = decimals;
    while (enough < MOST_DECIMALS
        && Math.abs(value) > Closeness.PART
        && rounded(value, enough).signum() == 0) {
      enough++;
    }
    return fixed(value, enough);
  }

  /**
   * How many decimals it takes to show four digits that count, at most nine; a figure from 1000 on
   * shows all that stand before the point.
   */
  public static int decimals(double value) {
    double size = Math.abs(value);
    if (!(size > 0 && size < MOST_READ)) {
      return DIGITS - 1;
    }
    // 9.99996 is read as 10.00, which stands with one digit more before the point.
    BigDecimal read = significant(size);
    int ahead = read.precision() - read.scale();
    return Math.max(0, Math.min(MOST_DECIMALS, DIGITS - ahead));
  }

  /**
   * With three to four significant digits, trailing zeros dropped: for reading at a glance; {@code
   * ∞} for a quotient over nothing.
   */
  public static String plain(double value) {
    if (Double.isInfinite(value)) {
      return "∞";
    }
    BigDecimal figure = significant(value);
    BigDecimal bare = figure.signum() == 0 ? BigDecimal.ZERO : figure.stripTrailingZeros();
    return bare.toPlainString();
  }

  /**
   * {@link #plain}, or with more digits where it takes them to see on which side of another figure
   * it lies. A figure within 1e-9 of the other counts as the same.
   */
  public static String plainBeside(double value, double other) {
    String plain = plain(value);
    boolean same = Closeness.same(value, other);
    if (same || Double.isInfinite(value) || Double.isInfinite(other)) {
      return plain;
    }
    String apart = apart(value, other, new BigDecimal(plain).scale()).value();
    return new BigDecimal(apart).compareTo(new BigDecimal(plain)) == 0 ? plain : apart;
  }

  /** {@link #plain} in a unit, from the base of its kind: {@code 0.35 -> 35 %}. */
  public static String plain(double base, Unit unit) {
    return plain(unit.fromBase(base)) + " " + unit.symbol();
  }

  /**
   * Two figures with as many decimals as it takes to tell them apart, at least {@code decimals}.
   */
  public static Pair apart(double value, double other, int decimals) {
    int enough = decimals;
    while (enough < MOST_DECIMALS && fixed(value, enough).equals(fixed(other, enough))) {
      enough++;
    }
    return new Pair(fixed(value, enough), fixed(other, enough), enough);
  }

  /** Two figures told apart, and how many decimals it took. */
  public record Pair(String value, String other, int decimals) {}

  /**
   * Half up, as a reader would. What lies far from a tie by more than all that reading and scaling
   * can move it is rounded as a whole number, which saves making the exact decimal of a double.
   */
  private static BigDecimal rounded(double value, int decimals) {
    if (decimals >= 0 && decimals < POWERS.length) {
      double scaled = Math.abs(value) * POWERS[decimals];
      double below = Math.floor(scaled);
      if (scaled < MOST_SCALED && Math.abs(scaled - below - 0.5) > NEAR_A_TIE) {
        long whole = (long) (scaled - below > 0.5 ? below + 1 : below);
        return BigDecimal.valueOf(value < 0 ? -whole : whole, decimals);
      }
    }
    BigDecimal figure = readable(value).setScale(decimals, RoundingMode.HALF_UP);
    return figure.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : figure;
  }

  /** With four digits that count, and zeros behind them. */
  private static BigDecimal significant(double value) {
    int decimals = decimalsOfFour(Math.abs(value));
    return decimals < POWERS.length
        ? rounded(value, decimals)
        : readable(value).round(new MathContext(DIGITS, RoundingMode.HALF_UP));
  }

  /** How many decimals four digits take, counted from the first; too many where it is not told. */
  private static int decimalsOfFour(double size) {
    if (size >= POWERS[DIGITS] || !(size > 0)) {
      return POWERS.length;
    }
    int decimals = DIGITS - 1;
    for (int power = 1; power < DIGITS && size >= POWERS[power]; power++) {
      decimals--;
    }
    for (int power = 0; decimals < POWERS.length && size * POWERS[power] < 1; power++) {
      decimals++;
    }
    return decimals;
  }

  private static BigDecimal readable(double value) {
    return new BigDecimal(value).round(READABLE);
  }
}
