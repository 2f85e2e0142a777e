package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.leastcost.FoundFeeds.Case;
import dev.pellucid.engine.leastcost.Reasons.PriceRange;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Optimiser;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shares stay as they are just inside a range of prices, and not just outside. */
class PriceRangesTest {
  /** The part of a price by which it is moved beyond an end. */
  private static final double LITTLE = 1e-3;

  /**
   * Points by which a share that stays may move: of limits in so many batches the surface is bent.
   */
  private static final double STAYS = 2e-3;

  static Stream<Case> feeds() {
    return Stream.concat(
        FoundFeeds.ofExample().stream(),
        FoundFeeds.random(Integer.getInteger("pellucid.explained", 50)).stream());
  }

  @ParameterizedTest
  @MethodSource("feeds")
  void sharesStayInsideAndNotOutside(Case one) {
    List<PriceRange> ranges =
        new PriceRanges(one.found(), one.prices(), Solver.standard(), Optional.of(one.nearby()))
            .of();
    int inUse = 0;
    for (double share : one.found().shares()) {
      inUse += share > 1e-9 ? 1 : 0;
    }
    assertEquals(inUse, ranges.size(), () -> "told of each in use: " + ranges);
    for (PriceRange range : isSettled(one) ? ranges : List.<PriceRange>of()) {
      double little = Math.min(LITTLE * range.price(), (range.to() - range.from()) / 4);
      double to = Math.min(range.to() - little, 3 * range.price() + range.from());
      assertTrue(moved(one, range, range.from() + little) < STAYS, () -> "above " + range);
      assertTrue(moved(one, range, to) < STAYS, () -> "below " + range);
      if (Double.isFinite(range.to())) {
        double beyond = Math.max(little, LITTLE * range.to());
        assertTrue(moved(one, range, range.to() + beyond) > 1e-5, () -> "beyond " + range);
      }
      if (range.from() > little) {
        assertTrue(moved(one, range, range.from() - little) > 1e-5, () -> "before " + range);
      }
    }
  }

  /** Whether shares come out the same from where they are: not so on a surface that is all flat. */
  private static boolean isSettled(Case one) {
    return one.nearby()
        .solve(one.found().task(), one.found().shares())
        .byKind(found -> moved(one, found) < STAYS / 2, unmet -> false, undecided -> false);
  }

  /** By how many points the share moves that moves most. */
  private static double moved(Case one, PriceRange range, double perKg) {
    Ingredient ingredient = FoundFeeds.ingredient(range.name());
    return new Optimiser(Solver.standard())
        .solve(
            one.found()
                .task()
                .priced(Repriced.of(one.posed().recipe(), ingredient, perKg).orElseThrow()))
        .byKind(
            found -> moved(one, found),
            // Where the recipe has a limit on its cost.
            unmet -> Double.POSITIVE_INFINITY,
            undecided -> {
              throw new AssertionError(undecided.why());
            });
  }

  private static double moved(Case one, Answer.Found found) {
    double most = 0;
    for (int i = 0; i < found.shares().length; i++) {
      most = Math.max(most, Math.abs(found.shares()[i] - one.found().shares()[i]));
    }
    return most;
  }
}
