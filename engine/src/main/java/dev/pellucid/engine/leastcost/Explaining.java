package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.leastcost.Reasons.Next;
import dev.pellucid.engine.leastcost.Reasons.Sweep;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Nearby;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.ProgramPrices;
import java.util.Optional;

/**
 * The reasons of an answer. What is read off its program is told of every feed; what must be solved
 * for again (between which bounds a price holds, how much of an ingredient would come in, sweeps,
 * the next cheapest) only where one recipe is asked for.
 */
final class Explaining {
  private final Solver solver;
  private final FeedComputer computer;

  Explaining(Solver solver, FeedComputer computer) {
    this.solver = solver;
    this.computer = computer;
  }

  /**
   * @param then the feed with the shares as they would be written
   */
  Reasons of(Posed posed, Answer.Found found, ComputedFeed then) {
    boolean inFull = posed.wishes().inFull();
    Nearby nearby = new Nearby(new Optimiser(solver), found);
    ProgramPrices prices = new ProgramPrices(found);
    LimitPrices limits = new LimitPrices(nearby, found, prices, inFull);
    IngredientValues values = new IngredientValues(posed, found, prices, computer, nearby, inFull);
    Optional<Sweep> sweep =
        inFull
            ? posed.wishes().sweep().flatMap(wish -> new Sweeping(posed, found, nearby).of(wish))
            : Optional.empty();
    Optional<Next> next = inFull ? new NextCheapest(posed, found, nearby).of() : Optional.empty();
    return new Reasons(
        limits.limits(),
        FigureMoves.of(posed.recipe(), then),
        values.of(),
        new PriceRanges(found, prices, solver, inFull ? Optional.of(nearby) : Optional.empty())
            .of(),
        sweep,
        next,
        limits.shares());
  }
}
