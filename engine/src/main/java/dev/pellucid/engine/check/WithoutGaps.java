package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.syntax.Bound;
import java.util.List;

/**
 * The minima that the recipe breaks only because the folder does not tell what a step leaves: they
 * cannot be judged, which {@link UnknownRetention} says.
 */
final class WithoutGaps {
  private WithoutGaps() {}

  static List<Verdict> unjudged(Inspection recipe) {
    boolean gaps = recipe.feed().filter(feed -> !feed.retentionGaps().isEmpty()).isPresent();
    List<Verdict> broken =
        recipe.verdicts().stream()
            .filter(v -> !v.keeps() && v.limit().side() == Bound.Side.MIN)
            .toList();
    if (!gaps || broken.isEmpty()) {
      return List.of();
    }
    List<Verdict> without =
        recipe.feed().map(ComputedFeed::asIfGapsKeptAll).map(Judge::verdicts).orElse(List.of());
    return broken.stream().filter(v -> without.get(recipe.verdicts().indexOf(v)).keeps()).toList();
  }
}
