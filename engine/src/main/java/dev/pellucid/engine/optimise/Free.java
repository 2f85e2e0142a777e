package dev.pellucid.engine.optimise;

import dev.pellucid.engine.resolve.Line;

/**
 * A line whose share may change, and how far; in points, kg of its share as written per 100 kg of
 * recipe.
 *
 * @param orNone whether it may also be left out
 * @param step a share above zero is a whole multiple of it; zero for any share
 */
public record Free(Line line, double low, double high, boolean orNone, double step) {
  /** No line is more than all. */
  public static final double ALL = 100;

  /** Within other bounds. */
  public Free between(double newLow, double newHigh) {
    return new Free(line, newLow, newHigh, orNone, step);
  }

  /** Its share as it is written. */
  public double written() {
    return line.designed().kgPer100();
  }

  /** Only as it is written. */
  public Free fixed() {
    return new Free(line, written(), written(), false, 0);
  }
}
