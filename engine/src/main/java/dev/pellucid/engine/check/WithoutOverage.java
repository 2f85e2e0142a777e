package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.syntax.Bound;
import java.util.Optional;

/** The maxima that the recipe breaks only because of what it weighs on top for handling. */
final class WithoutOverage {
  private WithoutOverage() {}

  /** The figure without overage, where it is the overage alone that breaks the maximum. */
  static Optional<Verdict> keeps(Inspection recipe, Verdict broken) {
    if (broken.keeps() || broken.limit().side() != Bound.Side.MAX) {
      return Optional.empty();
    }
    return recipe
        .feed()
        .filter(feed -> feed.recipe().lines().stream().anyMatch(WithoutOverage::hasOverage))
        .flatMap(ComputedFeed::withOverageLost)
        .map(without -> Judge.verdicts(without).get(recipe.verdicts().indexOf(broken)))
        .filter(Verdict::keeps);
  }

  static boolean hasOverage(Line line) {
    return line.hasOnTop();
  }
}
