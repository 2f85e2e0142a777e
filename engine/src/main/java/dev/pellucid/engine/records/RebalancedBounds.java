package dev.pellucid.engine.records;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;

/**
 * How far the share of a line may go in one batch: within what the recipe tells. A line that tells
 * nothing may move by half, and a small one up by half a point; the rest then takes what is left.
 */
final class RebalancedBounds {
  private static final double HALF = 0.5;

  /** A salt or an amino acid may grow by as much. */
  private static final double SMALL = 0.005;

  private RebalancedBounds() {}

  /** Parts of one, and the same in words. */
  record Ends(double low, double high, String words, Span place) {}

  static boolean allow(Line line, double part) {
    if (line.within().isPresent()) {
      return line.allows(part);
    }
    Ends ends = of(line);
    return !Closeness.isBelow(part, ends.low()) && !Closeness.isAbove(part, ends.high());
  }

  static Ends of(Line line) {
    if (line.within().isPresent()) {
      Line.Within within = line.within().get();
      return new Ends(
          within.low(),
          within.high(),
          "keeps it within " + within.asWritten(),
          within.written().span());
    }
    double now = line.designed().part();
    double low = line.rest() ? 0 : now * HALF;
    double high = line.rest() ? 1 : Math.max(now * (1 + HALF), now + SMALL);
    return new Ends(
        low,
        high,
        "has no within for it, so that it may be "
            + Figures.plain(Unit.PERCENT.fromBase(low))
            + " to "
            + Figures.plain(high, Unit.PERCENT),
        line.figure());
  }
}
