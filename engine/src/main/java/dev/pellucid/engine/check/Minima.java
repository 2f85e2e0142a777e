package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The minima of a recipe that are about one nutrient alone, brought to the feed as fed. */
final class Minima {
  private Minima() {}

  /** The highest minimum of a nutrient, where it has one. */
  static Optional<Limit> of(ComputedFeed feed, Nutrient nutrient) {
    return about(feed.recipe(), nutrient)
        .filter(limit -> limit.side() == Bound.Side.MIN)
        .max(Comparator.comparingDouble(limit -> asFed(feed, limit)));
  }

  private static Stream<Limit> about(ResolvedRecipe recipe, Nutrient nutrient) {
    return recipe.limits().stream()
        .filter(
            limit ->
                limit.subject() instanceof Subject.Nutrients sum
                    && sum.nutrients().equals(List.of(nutrient)));
  }

  /** The bound in force per kg of feed as fed, in the base of its kind. */
  static double asFed(ComputedFeed feed, Limit limit) {
    double dry = 1 - feed.balances().expected().moisture();
    if (limit.basis() instanceof Basis.DryMatter) {
      return limit.inForce() * dry;
    }
    return limit.basis() instanceof Basis.AtMoisture at
        ? limit.inForce() * dry / (1 - at.moisture())
        : limit.inForce();
  }
}
