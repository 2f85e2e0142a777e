package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.records.FirstExpiredFirstOut;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.records.GoesInto;
import dev.pellucid.engine.records.Stock;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What of each ingredient may be taken from the store: what is left of the lots that are passed,
 * all batches that are written down taken off. An ingredient of which the folder keeps no lots is
 * not counted.
 */
public record InStore(FeedTables tables, Stock stock) {
  /** More than any batch takes. */
  private static final double MUCH_KG = 1e6;

  private static final double WHOLE = 100;

  /**
   * The kg of its lots that may go into a feed on a day; empty where the folder keeps none of it.
   *
   * @param kg that are made of the feed
   */
  public OptionalDouble left(
      Ingredient ingredient, ResolvedRecipe recipe, double kg, LocalDate day, LocalDate today) {
    GoesInto into = GoesInto.of(recipe, kg, day, today);
    Optional<FirstExpiredFirstOut> there =
        FirstExpiredFirstOut.of(ingredient, MUCH_KG, into, tables, stock);
    return there.isPresent()
        ? OptionalDouble.of(there.get().picks().stream().mapToDouble(Pick::kg).sum())
        : OptionalDouble.empty();
  }

  /** The task with one batch of the recipe's size bounded by the store; itself without a size. */
  Task bounding(RuleContext recipe, Task task) {
    ComputedFeed feed = task.feed();
    if (feed.recipe().batch().isEmpty()) {
      return task;
    }
    double kg = feed.weighed(feed.recipe().batch().get());
    List<Tightened> kept = new ArrayList<>(task.kept());
    for (Free one : task.free()) {
      Optional<Material.Single> single = one.line().material().single();
      OptionalDouble left =
          single.isPresent()
              ? left(single.get().ingredient(), feed.recipe(), kg, recipe.day(), recipe.day())
              : OptionalDouble.empty();
      if (left.isPresent()) {
        double points =
            left.getAsDouble() / kg * WHOLE - others(feed, one.line(), single.get().ingredient());
        kept.add(
            new Tightened(
                new Requirement.OfStock(
                    single.get().name(), one.line(), points, Requirement.OfStock.Counted.LINE),
                0));
      }
    }
    return task.keeping(kept);
  }

  /** What other lines take of the same. */
  private static double others(ComputedFeed feed, Line line, Ingredient ingredient) {
    double points = 0;
    for (Line other : feed.recipe().lines()) {
      boolean same = other.material().name().equals(ingredient.name());
      points += same && other.index() != line.index() ? other.share().kgPer100() : 0;
    }
    return points;
  }
}
