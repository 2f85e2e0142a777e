package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Price;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Newer prices of what is in a feed, from a day that has not come. */
final class LaterPrices {
  private LaterPrices() {}

  /** The first such day. */
  static Optional<LocalDate> from(RuleContext recipe, ComputedFeed feed) {
    LocalDate first = null;
    for (Row row : feed.everyRow()) {
      List<Price> prices =
          recipe.tables().prices().getOrDefault(row.ingredient().name(), List.of());
      for (Price price : prices) {
        boolean later = price.from().isAfter(recipe.day());
        if (later && (first == null || price.from().isBefore(first))) {
          first = price.from();
        }
      }
    }
    return Optional.ofNullable(first);
  }
}
