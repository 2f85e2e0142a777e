package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** What must be put right before least cost can be asked of a recipe. */
final class Unready {
  /** Prices that are older say little of what is bought today. */
  static final int DAYS = 60;

  private static final String TAKEN = " are with -Dpellucid.prices=any";

  private Unready() {}

  /** In a sentence with what to do; empty where nothing must. */
  static Optional<String> why(Posed posed) {
    Optional<String> prices = prices(posed);
    if (prices.isPresent() || canMove(posed.task().free())) {
      return prices;
    }
    return Optional.of(
        "no two lines are free to change: write within 2 to 10 % behind the share of some, or"
            + " name them with -Dpellucid.free=...");
  }

  /** The same of its prices alone. */
  static Optional<String> prices(Posed posed) {
    Optional<String> unpriced = unpriced(posed);
    return unpriced.isPresent() || posed.wishes().anyPrices()
        ? unpriced
        : old(posed).or(() -> doubted(posed));
  }

  /** Those that may come in too: what has no price would be taken for a gift. */
  private static Optional<String> unpriced(Posed posed) {
    SortedSet<String> names = new TreeSet<>();
    for (Row row : posed.task().feed().everyRow()) {
      if (row.price().isEmpty()) {
        names.add(row.ingredient().name());
      }
    }
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.join(", ", names)
                + (names.size() == 1 ? " has" : " have")
                + " no price on "
                + posed.recipe().day()
                + ": write one into a file of prices/");
  }

  private static Optional<String> old(Posed posed) {
    Optional<Price> oldest = Optional.empty();
    for (Row row : posed.task().feed().everyRow()) {
      LocalDate from = row.price().orElseThrow().from();
      if (oldest.isEmpty() || from.isBefore(oldest.get().from())) {
        oldest = row.price();
      }
    }
    LocalDate day = posed.recipe().day();
    if (oldest.isEmpty() || !oldest.get().from().isBefore(day.minusDays(DAYS))) {
      return Optional.empty();
    }
    return Optional.of(
        "the price of "
            + oldest.get().ingredient()
            + " is of "
            + oldest.get().from()
            + ", "
            + ChronoUnit.DAYS.between(oldest.get().from(), day)
            + " days old, and "
            + DAYS
            + " are taken at most"
            + later(posed)
            + ": write today's into a file of prices/, or take old ones as they"
            + TAKEN);
  }

  /** A newer list may stand there with a day that is a slip. */
  private static String later(Posed posed) {
    return LaterPrices.from(posed.recipe(), posed.task().feed())
        .map(from -> " (those from " + from + " do not count yet)")
        .orElse("");
  }

  /** A slipped point in a price would move every recipe to it. */
  private static Optional<String> doubted(Posed posed) {
    for (Row row : posed.task().feed().everyRow()) {
      Optional<Finding> doubt = row.price().flatMap(posed.holding()::doubt);
      if (doubt.isPresent()) {
        return Optional.of(
            "check doubts a price, "
                + doubt.get().headline()
                + ": put it right, or take prices as they"
                + TAKEN);
      }
    }
    return Optional.empty();
  }

  /** Whether there are two lines of which one can take from the other. */
  static boolean canMove(List<Free> free) {
    int may = 0;
    for (Free one : free) {
      may += one.high() > one.low() || one.high() != one.written() ? 1 : 0;
    }
    return may > 1;
  }
}
