package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.optimise.Requirement.OfLabel;
import dev.pellucid.engine.optimise.Requirement.OfLimit;
import dev.pellucid.engine.optimise.Requirement.OfPractice;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;

/** Something to keep, with another figure in the place of its own. */
public final class OtherBound {
  private OtherBound() {}

  /**
   * Empty for what is never asked for with another.
   *
   * @param bound in the base of its kind
   */
  public static Optional<Requirement> of(Requirement one, double bound) {
    return one.byKind(
        limit ->
            Optional.of(new OfLimit(at(limit.limit(), bound), limit.deviations(), limit.asTold())),
        practice -> Optional.of(at(practice, bound)),
        cap -> Optional.empty(),
        label -> Optional.of(new OfLabel(label.verdict(), label.side(), bound)),
        order -> Optional.empty(),
        stock -> Optional.empty());
  }

  private static Limit at(Limit limit, double bound) {
    return new Limit(
        limit.subject(),
        limit.side(),
        bound,
        limit.written(),
        limit.basis(),
        limit.inBatches(),
        limit.origin(),
        Optional.empty());
  }

  private static OfPractice at(OfPractice practice, double bound) {
    PracticeBound was = practice.bound();
    boolean min = practice.side() == Bound.Side.MIN;
    return new OfPractice(
        practice.figure(),
        new PracticeBound(
            min ? bound : was.low(), min ? was.high() : bound, was.asWritten(), was.source()),
        practice.side());
  }

  /** The same, asking for no more than a feed already keeps. */
  public static Tightened noWorse(Requirement one, Slopes feed) {
    Optional<Requirement> now =
        of(one, 0).isPresent() ? of(one, kept(one, feed)) : Optional.empty();
    if (now.isPresent()) {
      return new Tightened(now.get(), 0);
    }
    double room = 0;
    for (Slope left : one.rooms(feed)) {
      room = Math.min(room, left.now());
    }
    return new Tightened(one, room);
  }

  /** Whether it asks for no less than its figure; else for no more. */
  static boolean isLeast(Requirement one) {
    return one.byKind(
        limit -> limit.limit().side() == Bound.Side.MIN,
        practice -> practice.side() == Bound.Side.MIN,
        cap -> false,
        label -> label.side() == Bound.Side.MIN,
        order -> true,
        stock -> false);
  }

  /**
   * The bound that a feed just keeps, which is the figure that is judged. What is left to a bound
   * is a straight line of it: two of them tell where it is zero.
   */
  public static double kept(Requirement one, Slopes feed) {
    List<Slope> atZero = of(one, 0).orElseThrow().rooms(feed);
    List<Slope> atOne = of(one, 1).orElseThrow().rooms(feed);
    boolean least = isLeast(one);
    double kept = least ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    for (int i = 0; i < atZero.size(); i++) {
      double bound = atZero.get(i).now() / (atZero.get(i).now() - atOne.get(i).now());
      kept = least ? Math.min(kept, bound) : Math.max(kept, bound);
    }
    return kept;
  }
}
