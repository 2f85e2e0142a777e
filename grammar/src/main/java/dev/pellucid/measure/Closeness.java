package dev.pellucid.measure;

/**
 * When two figures count as the same: where they are nearer than anybody could write or weigh, so
 * that what is only the noise of reckoning decides nothing.
 */
public final class Closeness {
  /** The part of a figure by which another may be off. */
  public static final double PART = 1e-9;

  private Closeness() {}

  /** By how much another figure may be off a figure; nothing is close to one without end. */
  public static double to(double figure) {
    return Double.isInfinite(figure) ? 0 : PART * Math.abs(figure);
  }

  /** Whether two figures are the same. */
  public static boolean same(double one, double other) {
    return one == other || Math.abs(one - other) <= to(Math.max(Math.abs(one), Math.abs(other)));
  }

  /** Whether a figure is at a bound or below it. */
  public static boolean isAtMost(double figure, double bound) {
    return figure <= bound + to(bound);
  }

  /** Whether a figure is at a bound or above it. */
  public static boolean isAtLeast(double figure, double bound) {
    return figure >= bound - to(bound);
  }

  /** Whether a figure is clearly above a bound. */
  public static boolean isAbove(double figure, double bound) {
    return figure > bound + to(bound);
  }

  /** Whether a figure is clearly below a bound. */
  public static boolean isBelow(double figure, double bound) {
    return figure < bound - to(bound);
  }

  /** The next whole number, or the one that a number is at: how many it takes. */
  public static double up(double number) {
    return Math.ceil(number - PART);
  }

  /** The whole number before, or the one that a number is at: how many go into it. */
  public static double down(double number) {
    return Math.floor(number + PART);
  }
}
