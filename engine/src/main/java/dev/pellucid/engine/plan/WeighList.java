package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.larder.Ingredient.Form;
import dev.pellucid.engine.larder.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The lines of a recipe in kg for a batch, and which of them are weighed apart. */
final class WeighList {
  private static final double SMALL_PERCENT = 1;
  private static final Set<Trait> BY_THE_GRAM =
      EnumSet.of(
          Trait.VITAMIN, Trait.CHOLINE, Trait.TRACE_SALT, Trait.ANTIOXIDANT, Trait.MEDICATED);

  private final ComputedFeed feed;
  private final double times;
  private final List<Weighed> lines;

  WeighList(ComputedFeed feed, double times) {
    this.feed = feed;
    this.times = times;
    this.lines = feed.recipe().lines().stream().map(this::weighed).toList();
  }

  List<Weighed> lines() {
    return lines;
  }

  private Weighed weighed(Line line) {
    double inFeed = line.share().kgPer100() + line.onTop().kgPer100();
    boolean coat = line.place() == Line.Place.COAT;
    return new Weighed(
        line.place(),
        line.material().name(),
        line.material().title(),
        line.designed().kgPer100(),
        line.designed().kgPer100() * times,
        line.share().minus(line.designed()).kgPer100() * times,
        line.onTop().kgPer100() * times,
        micro(line),
        liquid(line),
        coat ? inFeed / feed.balances().expected().kernel() : 0);
  }

  private boolean micro(Line line) {
    return line.material() instanceof Material.Premixed
        || line.designed().kgPer100() < SMALL_PERCENT
        || feed.rows().stream()
            .filter(row -> row.line().index() == line.index())
            .map(Row::ingredient)
            .anyMatch(one -> one.traits().stream().anyMatch(BY_THE_GRAM::contains));
  }

  private static boolean liquid(Line line) {
    return line.material() instanceof Material.Single single
        && (single.ingredient().form() == Form.OIL || single.ingredient().form() == Form.LIQUID);
  }
}
