package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.Reasons.PriceRange;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Stays;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.ProgramPrices;
import dev.pellucid.engine.resolve.Material;
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

  PriceRanges(Answer.Found found, ProgramPrices prices, Solver solver) {
    this.found = found;
    this.prices = prices;
    this.solver = solver;
  }

  /** In the order of the file. */
  List<PriceRange> of() {
    List<PriceRange> ranges = new ArrayList<>();
    for (int i = 0; i < found.shares().length; i++) {
      Optional<Material.Single> one = found.task().free().get(i).line().material().single();
      Optional<Price> price = one.flatMap(Material.Single::price);
      if (price.isPresent() && found.shares()[i] > LEAST) {
        String name = price.get().ingredient();
        double now = price.get().perKg();
        Stays.along(found.program(), found.optimum(), prices.dearer(name), solver)
            .map(
                stays ->
                    new PriceRange(name, now, Math.max(0, now + stays.from()), now + stays.to()))
            .ifPresent(ranges::add);
      }
    }
    return ranges;
  }
}
