package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.syntax.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A feed with lines for ingredients that it does not hold, each with a share of zero. */
public final class Offered {
  private Offered() {}

  /** Empty where the feed then has no figures. */
  public static Optional<ComputedFeed> in(
      ComputedFeed feed,
      List<Ingredient> more,
      FeedTables tables,
      FeedComputer computer,
      LocalDate day) {
    ResolvedRecipe recipe = feed.recipe();
    List<Line> lines = new ArrayList<>(recipe.lines());
    for (Ingredient one : more) {
      lines.add(line(lines.size(), one, tables, recipe, day));
    }
    return computer.compute(recipe.asMade(lines, recipe.process())).feed();
  }

  private static Line line(
      int index, Ingredient one, FeedTables tables, ResolvedRecipe recipe, LocalDate day) {
    return new Line(
        index,
        place(one, recipe),
        new Material.Single(one, tables.price(one.name(), day)),
        Share.ZERO,
        Share.ZERO,
        Share.ZERO,
        0,
        false,
        Optional.empty(),
        Optional.empty(),
        recipe.declared(),
        recipe.declared());
  }

  /** Oil goes on the kernel of a feed that is coated, all else through the mixer. */
  static Place place(Ingredient one, ResolvedRecipe recipe) {
    boolean coated = recipe.process().has(Step.COAT);
    return coated && one.form() == Ingredient.Form.OIL ? Place.COAT : Place.MIX;
  }
}
