package dev.pellucid.engine.data;

import java.util.Arrays;
import java.util.OptionalInt;

/**
 * The one figure of an ordered list whose decimal point stands one place off: with the point where
 * it belongs all are in order, and without it they are not, or one gap is very wide.
 */
final class OneShifted {
  private static final double[] SHIFTS = {0.1, 10};
  private static final int FEWEST = 3;
  private static final double WIDE = 8;
  private static final double NARROW = 3;

  private final double[] rising;
  private int index = -1;
  private double shift = 1;

  /**
   * @param falling whether the list should fall; else it should rise
   */
  OneShifted(double[] figures, boolean falling) {
    this.rising = new double[figures.length];
    for (int i = 0; i < figures.length; i++) {
      rising[i] = falling ? 1 / figures[i] : figures[i];
    }
    if (figures.length >= FEWEST && widestGap(rising) >= WIDE) {
      find(falling);
    }
  }

  private void find(boolean falling) {
    double best = NARROW;
    for (int i = 0; i < rising.length; i++) {
      for (double one : SHIFTS) {
        double[] other = Arrays.copyOf(rising, rising.length);
        other[i] = falling ? rising[i] / one : rising[i] * one;
        double gap = widestGap(other);
        if (gap < best) {
          best = gap;
          index = i;
          shift = one;
        }
      }
    }
  }

  /** The most of a figure over the one before it; without end where they do not rise. */
  private static double widestGap(double[] figures) {
    double widest = 1;
    for (int i = 1; i < figures.length; i++) {
      if (figures[i] < figures[i - 1]) {
        return Double.MAX_VALUE;
      }
      widest = Math.max(widest, figures[i] / figures[i - 1]);
    }
    return widest;
  }

  /** Which one it is. */
  OptionalInt index() {
    return index < 0 ? OptionalInt.empty() : OptionalInt.of(index);
  }

  /** By how much it is to be multiplied. */
  double shift() {
    return shift;
  }
}
