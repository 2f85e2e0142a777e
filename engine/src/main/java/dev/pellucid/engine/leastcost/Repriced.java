package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.resolve.Line;
import java.util.Optional;

/** An ingredient at another price. */
final class Repriced {
  private Repriced() {}

  /** The price of the ingredient of a line, as it counts in a feed. */
  static Optional<Price> now(ComputedFeed feed, Line line) {
    for (Row row : feed.everyRow()) {
      if (row.line().index() == line.index()) {
        return row.price();
      }
    }
    return Optional.empty();
  }

  /** The same at so much for a kg. */
  static Price at(Price was, double perKg) {
    return new Price(
        was.ingredient(), was.from(), perKg, was.asWritten(), was.source(), was.place());
  }

  /** Empty for what has no price and tells no contents, so that there is no source to name. */
  static Optional<Price> of(RuleContext recipe, Ingredient one, double perKg) {
    Optional<Price> now = recipe.tables().price(one.name(), recipe.day());
    if (now.isPresent()) {
      return Optional.of(at(now.get(), perKg));
    }
    return one.contents().stream()
        .findFirst()
        .map(
            block ->
                new Price(one.name(), recipe.day(), perKg, "", block.source(), one.declared()));
  }
}
