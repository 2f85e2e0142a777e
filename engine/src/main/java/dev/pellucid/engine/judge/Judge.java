package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.List;

/** Holds the figures of a feed against each of its limits. */
public final class Judge {
  private Judge() {}

  /** How a feed stands with each limit on which there is anything told, in their order. */
  public static List<LimitStatus> limits(ComputedFeed feed) {
    return new Judging(feed).limits();
  }

  /** One limit against the figures of a feed. */
  public static Verdict verdict(Readings readings, Limit limit) {
    boolean spread = limit.inBatches().isPresent();
    Readings.At at = readings.judged(limit.subject(), limit.basis(), limit.side(), spread);
    double margin =
        spread ? Normal.quantile(limit.inBatches().getAsDouble()) * at.reading().deviation() : 0;
    boolean min = limit.side() == Bound.Side.MIN;
    double signed = min ? -margin : margin;
    boolean keeps = keeps(limit.side(), at.reading().value() + signed, limit.inForce());
    return new Verdict(limit, at.end(), at.reading(), signed, keeps);
  }

  /** Whether a figure keeps a bound; one within 1e-9 of it does. */
  public static boolean keeps(Bound.Side side, double judged, double bound) {
    return side == Bound.Side.MIN
        ? Closeness.isAtLeast(judged, bound)
        : Closeness.isAtMost(judged, bound);
  }
}
