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

  /** The least that it could ever be: nothing, and of the rest what overage of others takes. */
  public double floor() {
    double taken = written() - line.share().kgPer100();
    return line.rest() ? Math.min(low, Math.max(0, taken) * 2) : 0;
  }

  /** Only as it is written. */
  public Free fixed() {
    return new Free(line, written(), written(), false, 0);
  }
}
