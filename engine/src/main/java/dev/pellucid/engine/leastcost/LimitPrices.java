package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.leastcost.Reasons.SharePrice;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Bounding;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.HowLong;
import dev.pellucid.engine.optimise.Movable;
import dev.pellucid.engine.optimise.Nearby;
import dev.pellucid.engine.optimise.ProgramPrices;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What keeping each bound costs that binds. Where it is asked between which bounds a price holds,
 * it is solved again with the bound moved; where more binds than needs to, the price is that of one
 * step more, since one less then saves nothing.
 */
final class LimitPrices {
  private static final double PER_TONNE = 1000;
  private static final double POINT = 1;

  /** A tonne that costs so much more costs the same. */
  private static final double NONE = 1e-6;

  /** The part of a step by which a bound is moved to see what one step more costs. */
  private static final double PROBE = 1e-3;

  private static final double SAME = 0.01;

  private final Nearby nearby;
  private final Answer.Found found;
  private final ProgramPrices prices;
  private final boolean ranges;

  /**
   * @param ranges whether it is told between which bounds each price holds
   */
  LimitPrices(Nearby nearby, Answer.Found found, ProgramPrices prices, boolean ranges) {
    this.nearby = nearby;
    this.found = found;
    this.prices = prices;
    this.ranges = ranges;
  }

  /** The dearest first. */
  List<LimitPrice> limits() {
    List<LimitPrice> limits = new ArrayList<>();
    for (Requirement one : prices.binding()) {
      Optional<Movable> movable = Movable.of(one);
      if (movable.isPresent()) {
        limit(movable.get(), limits);
      }
    }
    limits.sort(Comparator.comparingDouble(LimitPrice::perTonne).reversed());
    return limits;
  }

  private void limit(Movable one, List<LimitPrice> limits) {
    TradeStep step = TradeStep.of(one);
    double unit = step.base(step.size());
    double told = prices.perUnit(one);
    Holds holds = holds(Bounding.of(found.task(), one), one.bound(), unit, told);
    double perTonne = holds.price() * unit * PER_TONNE;
    if (perTonne > NONE) {
      limits.add(
          new LimitPrice(
              one.of(),
              BoundWords.name(one.of()),
              step.unit(),
              step.told(one.bound()),
              step.size(),
              perTonne,
              step.told(holds.from()),
              step.told(holds.to()),
              isOnAverageOnly(one.of()),
              one.side(),
              step.bare()));
    }
  }

  /** The dearest first. */
  List<SharePrice> shares() {
    List<SharePrice> shares = new ArrayList<>();
    for (int i = 0; i < found.shares().length; i++) {
      Free free = found.task().free().get(i);
      double price = prices.perPoint(i);
      boolean isOut = free.orNone() && found.shares()[i] < free.low();
      if (free.low() < free.high() && free.step() == 0 && !isOut && price != 0) {
        share(free, i, price > 0 ? Bound.Side.MIN : Bound.Side.MAX, Math.abs(price), shares);
      }
    }
    shares.sort(Comparator.comparingDouble(SharePrice::perTonne).reversed());
    return shares;
  }

  private void share(Free free, int i, Bound.Side side, double price, List<SharePrice> shares) {
    double bound = side == Bound.Side.MIN ? free.low() : free.high();
    if (bound <= 0) {
      // There is no less of a line than none.
      return;
    }
    Holds holds = holds(Bounding.of(found.task(), i, side), bound, POINT, price);
    if (holds.price() * PER_TONNE > NONE) {
      shares.add(
          new SharePrice(
              free.line().material().name(),
              side,
              bound,
              holds.price() * PER_TONNE,
              holds.from(),
              holds.to()));
    }
  }

  /** A price of a bound, and between which bounds it holds. */
  private record Holds(double price, double from, double to) {}

  private Holds holds(Bounding bounding, double bound, double step, double told) {
    if (!ranges) {
      return new Holds(told, bound, bound);
    }
    HowLong howLong = new HowLong(nearby, bounding, found.shares(), step);
    Optional<HowLong.At> more = howLong.at(bound + bounding.tighter() * step * PROBE);
    double price = more.isPresent() ? more.get().price() : told;
    boolean turns = Math.abs(price - told) > SAME * price;
    HowLong.At here = new HowLong.At(bound, found.feed().costPerKg(), turns ? price : told);
    return new Holds(here.price(), howLong.end(here, -1), howLong.end(here, 1));
  }

  /**
   * A limit of contents that says nothing of batches, and of which none stands beside that does.
   */
  private boolean isOnAverageOnly(Requirement one) {
    return one.byKind(
        limit ->
            !limit.limit().subject().nutrients().isEmpty()
                && limit.deviations() == 0
                && !isAskedInBatches(limit),
        practice -> false,
        cap -> false,
        label -> false,
        order -> false,
        stock -> false);
  }

  private boolean isAskedInBatches(Requirement.OfLimit one) {
    for (Tightened kept : found.task().kept()) {
      boolean same =
          kept.of()
              .byKind(
                  limit -> limit.limit().equals(one.limit()) && limit.deviations() != 0,
                  practice -> false,
                  cap -> false,
                  label -> false,
                  order -> false,
                  stock -> false);
      if (same) {
        return true;
      }
    }
    return false;
  }
}
