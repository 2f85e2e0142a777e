package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.Reasons.PriceRange;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Stays;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.ProgramPrices;
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

  private final Answer.Found found;
  private final ProgramPrices prices;
  private final Solver solver;

  /** The program with what has a price, and the total. */
  private final LinearProgram priced;

  private final boolean settled;

  PriceRanges(Answer.Found found, ProgramPrices prices, Solver solver) {
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
            .map(
                stays ->
                    new PriceRange(name, now, Math.max(0, now + stays.from()), now + stays.to()))
            .ifPresent(ranges::add);
      }
    }
    return ranges;
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
