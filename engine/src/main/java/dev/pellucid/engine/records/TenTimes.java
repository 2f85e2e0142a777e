package dev.pellucid.engine.records;

import dev.pellucid.engine.quantity.Figures;
import java.util.Optional;

/**
 * Figures whose point stands a place too far left or right, or two; or whose unit is a thousand
 * times what was meant, as t is of kg.
 */
final class TenTimes {
  /** By what a figure is off whose point stands one place wrong. */
  static final double[] ONE_PLACE = {10, 0.1};

  private static final double[] PLACES = {10, 0.1, 100, 0.01, 1000, 0.001};

  private TenTimes() {}

  /** {@code 10 times}, {@code a tenth of}, {@code 3.5 times}. */
  static String words(double factor) {
    if (factor >= 1) {
      return Figures.plain(rounded(factor)) + " times";
    }
    double part = rounded(1 / factor);
    if (part == 10) {
      return "a tenth of";
    }
    return part == 100 ? "a hundredth of" : "a " + Figures.plain(part) + "th of";
  }

  private static double rounded(double factor) {
    double whole = Math.rint(factor);
    return whole >= 3 && Math.abs(factor - whole) < 0.05 * whole
        ? whole
        : Math.rint(factor * 10) / 10;
  }

  /** The figure with its point moved as little as brings it into a span. */
  static Optional<Double> moved(double figure, double low, double high) {
    for (double places : PLACES) {
      double moved = figure * places;
      if (moved >= low && moved <= high) {
        return Optional.of(moved);
      }
    }
    return Optional.empty();
  }
}
