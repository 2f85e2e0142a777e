package dev.pellucid.engine.optimise;

import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Something to keep whose bound can be moved, to see what it costs.
 *
 * @param of as it stands
 * @param side from which it bounds
 * @param bound in the base of its kind; of what is in store, a part of the recipe
 * @param at the same with another bound
 */
public record Movable(
    Requirement of, Bound.Side side, double bound, DoubleFunction<Requirement> at) {
  private static final double WHOLE = 100;

  /** Empty for what has no figure, such as the order of two ingredients. */
  public static Optional<Movable> of(Requirement one) {
    return one.byKind(
        limit ->
            Optional.of(
                new Movable(
                    one,
                    limit.limit().side(),
                    limit.limit().inForce(),
                    bound -> moved(limit, bound))),
        practice -> Optional.of(practice(practice)),
        cap ->
            Optional.of(new Movable(one, Bound.Side.MAX, cap.most(), bound -> moved(cap, bound))),
        label ->
            Optional.of(
                new Movable(
                    one,
                    label.side(),
                    label.bound(),
                    bound -> new Requirement.OfLabel(label.verdict(), label.side(), bound))),
        order -> Optional.empty(),
        stock ->
            Optional.of(
                new Movable(
                    one,
                    Bound.Side.MAX,
                    stock.points() / WHOLE,
                    bound ->
                        new Requirement.OfStock(
                            stock.ingredient(), stock.line(), bound * WHOLE, stock.counted()))));
  }

  /** Which way its bound goes when more is asked: up for a minimum. */
  public int tighter() {
    return side == Bound.Side.MIN ? 1 : -1;
  }

  private static Requirement moved(Requirement.OfLimit one, double bound) {
    Limit limit = one.limit();
    return new Requirement.OfLimit(
        new Limit(
            limit.subject(),
            limit.side(),
            bound,
            limit.written(),
            limit.basis(),
            limit.inBatches(),
            limit.origin(),
            Optional.empty()),
        one.deviations(),
        one.asTold());
  }

  private static Movable practice(Requirement.OfPractice one) {
    boolean min = one.side() == Bound.Side.MIN;
    PracticeBound bound = one.bound();
    return new Movable(
        one,
        one.side(),
        min ? bound.low() : bound.high(),
        at ->
            new Requirement.OfPractice(
                one.figure(),
                new PracticeBound(
                    min ? at : bound.low(),
                    min ? bound.high() : at,
                    bound.asWritten(),
                    bound.source()),
                one.side()));
  }

  private static Requirement moved(Requirement.OfCap one, double bound) {
    return new Requirement.OfCap(one.ingredient(), one.cap(), bound);
  }
}
