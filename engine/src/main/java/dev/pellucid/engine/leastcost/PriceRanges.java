package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.Reasons.PriceRange;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Stays;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Nearby;
import dev.pellucid.engine.optimise.ProgramPrices;
import dev.pellucid.engine.optimise.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * For each free ingredient in use the prices between which the cheapest shares are the same, its
 * price in premixes moving with it. Where an ingredient gets dearer, so does the kg in the bags;
 * the program of the answer is moved along by both.
 */
final class PriceRanges {
  private static final double LEAST = 1e-9;

  /** Shares that differ by less, in points, are the same: it is less than what is written. */
  private static final double SAME = 1e-3;

  /** The part of a price to which an end is looked for. */
  private static final double CLOSE = 1e-4;

  /** So many times its price nobody looks for an end. */
  private static final double MANY = 20;

  private final Answer.Found found;
  private final ProgramPrices prices;
  private final Solver solver;

  /** The program with what has a price, and the total. */
  private final LinearProgram priced;

  private final boolean settled;
  private final Optional<Nearby> nearby;

  /**
   * @param nearby solves again near each end: another choice of steps may be cheaper before the
   *     shares of this one move, and on a bent surface they move a little before; empty where
   *     nobody waits for that
   */
  PriceRanges(Answer.Found found, ProgramPrices prices, Solver solver, Optional<Nearby> nearby) {
    this.nearby = nearby;
    this.found = found;
    this.prices = prices;
    this.solver = solver;
    this.priced = priced(found);
    this.settled = isSettled(found, priced);
  }

  /** In the order of the file. */
  List<PriceRange> of() {
    List<PriceRange> ranges = new ArrayList<>();
    for (int i = 0; i < found.shares().length; i++) {
      Optional<Price> price = Repriced.now(found.feed(), found.task().free().get(i).line());
      if (price.isPresent() && found.shares()[i] > LEAST) {
        String name = price.get().ingredient();
        double now = price.get().perKg();
        stays(prices.direction(name))
            .map(stays -> range(price.get(), Math.max(0, now + stays.from()), now + stays.to()))
            .ifPresent(ranges::add);
      }
    }
    return ranges;
  }

  private PriceRange range(Price price, double from, double to) {
    double now = price.perKg();
    double most = Math.min(to, MANY * now);
    // Where shares are not settled to a digit at the price itself, no end can be looked for so.
    boolean looked = nearby.isPresent() && staysAt(price, now, nearby.get());
    double end = looked ? end(price, most, nearby.get()) : most;
    return new PriceRange(
        price.ingredient(),
        now,
        looked ? end(price, from, nearby.get()) : from,
        end < MANY * now ? end : Double.POSITIVE_INFINITY);
  }

  /** The shares are cheapest between two prices, so the end is looked for by halves. */
  private double end(Price price, double end, Nearby again) {
    double close = CLOSE * price.perKg();
    double inside = price.perKg();
    double outside = end;
    if (Math.abs(end - inside) <= close
        || staysAt(price, end + Math.signum(inside - end) * close, again)) {
      return end;
    }
    while (Math.abs(outside - inside) > close) {
      double middle = (inside + outside) / 2;
      if (staysAt(price, middle, again)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  private boolean staysAt(Price price, double perKg, Nearby again) {
    Task task = found.task().priced(Repriced.at(price, perKg));
    return again
        .solve(task, found.shares())
        .byKind(this::isSame, unmet -> false, undecided -> false);
  }

  private boolean isSame(Answer.Found other) {
    for (int i = 0; i < found.shares().length; i++) {
      if (Math.abs(other.shares()[i] - found.shares()[i]) > SAME) {
        return false;
      }
    }
    return true;
  }

  /**
   * By the bounds that have a price, where these settle the shares, and else by all at which the
   * shares stand.
   */
  private Optional<Stays> stays(double[] direction) {
    Optional<Stays> exact =
        settled
            ? Optional.empty()
            : Stays.along(found.program(), found.optimum(), direction, solver);
    return exact.or(() -> Stays.along(priced, found.optimum(), direction, solver));
  }

  private static boolean isSettled(Answer.Found found, LinearProgram priced) {
    int between = 0;
    for (double price : found.optimum().boundPrices()) {
      between += price == 0 ? 1 : 0;
    }
    return priced.constraints().size() >= between;
  }

  private static LinearProgram priced(Answer.Found found) {
    List<Constraint> constraints = new ArrayList<>();
    for (int i = 0; i < found.program().constraints().size(); i++) {
      if (i >= found.rows().size() || found.optimum().price(i) != 0) {
        constraints.add(found.program().constraints().get(i));
      }
    }
    return new LinearProgram(found.program().variables(), constraints);
  }
}
