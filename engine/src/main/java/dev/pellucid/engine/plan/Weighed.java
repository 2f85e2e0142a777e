package dev.pellucid.engine.plan;

import dev.pellucid.engine.resolve.Line;

/**
 * One line of the weigh list, in kg for the whole batch.
 *
 * @param share the recipe share in percent, as written or as {@code rest} comes to
 * @param target the recipe share of the batch
 * @param stability what stability overage adds to it; of the {@code rest} what the others take away
 * @param handling what is weighed on top and expected to be lost
 * @param micro whether it is weighed apart and checked by a second person: a premix, a trait that
 *     harms by the gram, or less than 1 % of the feed (common practice, no source)
 * @param liquid whether it goes in after the dry lines, slowly
 * @param perKgKernel kg to weigh per kg of kernel; nought in the mix
 */
public record Weighed(
    Line.Place place,
    String name,
    String title,
    double share,
    double target,
    double stability,
    double handling,
    boolean micro,
    boolean liquid,
    double perKgKernel) {
  /** Overage of both kinds. */
  public double extra() {
    return stability + handling;
  }

  /** What the scale must show. */
  public double total() {
    return target + extra();
  }

  /** Several lines together: percent, then kg. */
  public record Sum(double share, double target, double extra, double total, double perKgKernel) {}
}
