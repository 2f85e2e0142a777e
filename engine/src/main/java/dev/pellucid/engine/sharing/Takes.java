package dev.pellucid.engine.sharing;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.optimise.JointTask.Made;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a feed takes of ingredients for all that is made of it. */
final class Takes {
  private Takes() {}

  /** Of one, by its recipe, or as its batches are weighed on the scales of the plant if more. */
  static double most(Made made, RuleContext recipe, String ingredient) {
    ComputedFeed feed = recipe.feed().orElseThrow();
    double written = of(made, feed, ingredient);
    Optional<ComputedFeed> weighed =
        recipe.floor().plan().flatMap(plan -> feed.weighed(plan.asRounded(feed.recipe())).feed());
    return weighed.isPresent() ? Math.max(written, of(made, weighed.get(), ingredient)) : written;
  }

  private static double of(Made made, ComputedFeed feed, String ingredient) {
    Slopes slopes = new Slopes(feed);
    return made.all(slopes, slopes.taken(ingredient)).now();
  }

  /** Of one, what premixes bring of it. */
  static double premixed(Made made, ComputedFeed feed, String ingredient) {
    Slopes slopes = new Slopes(feed);
    return made.all(slopes, slopes.premixed(ingredient)).now();
  }

  /** Of all, kg by name; what comes back in rework is taken from nowhere. */
  static SortedMap<String, Double> all(Made made, ComputedFeed feed) {
    Slopes slopes = new Slopes(feed);
    SortedMap<String, Double> kg = new TreeMap<>();
    for (Row row : feed.rows()) {
      String name = row.ingredient().name();
      if (!kg.containsKey(name)) {
        double taken = made.all(slopes, slopes.taken(name)).now();
        if (taken > 0) {
          kg.put(name, taken);
        }
      }
    }
    return kg;
  }

  /** Money for all of it. */
  static double money(Made made, ComputedFeed feed) {
    Slopes slopes = new Slopes(feed);
    return made.all(slopes, slopes.money()).now();
  }
}
