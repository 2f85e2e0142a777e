package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.account.PriceStanding;
import dev.pellucid.engine.account.PriceStanding.Priced;
import dev.pellucid.engine.optimise.Free;
import java.util.List;
import java.util.Optional;

/** What must be put right before least cost can be asked of a recipe. */
final class Unready {
  /** Prices that are older say little of what is bought today. */
  static final int DAYS = 60;

  private Unready() {}

  /** In a sentence with what to do; empty where nothing must. */
  static Optional<String> why(Posed posed) {
    PriceStanding prices = PriceStanding.of(posed.task().feed(), posed.recipe().day());
    if (!prices.unpriced().isEmpty()) {
      return Optional.of(
          String.join(", ", prices.unpriced())
              + (prices.unpriced().size() == 1 ? " has" : " have")
              + " no price on "
              + posed.recipe().day()
              + ": write one into a file of prices/");
    }
    List<Priced> old = prices.olderThan(DAYS);
    if (!old.isEmpty() && !posed.wishes().anyPrices()) {
      Priced oldest = prices.oldest().orElseThrow();
      return Optional.of(
          "the price of "
              + oldest.ingredient()
              + " is of "
              + oldest.from()
              + ", "
              + oldest.days()
              + " days old, and "
              + DAYS
              + " are taken at most: write today's into a file of prices/, or take old ones as they"
              + " are with -Dpellucid.prices=any");
    }
    return canMove(posed.task().free())
        ? Optional.empty()
        : Optional.of(
            "no two lines are free to change: write within 2 to 10 % behind the share of some, or"
                + " name them with -Dpellucid.free=...");
  }

  private static boolean canMove(List<Free> free) {
    int may = 0;
    for (Free one : free) {
      may += one.high() > one.low() || one.high() != one.written() ? 1 : 0;
    }
    return may > 1;
  }
}
