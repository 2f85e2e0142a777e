package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Bought;
import java.util.List;
import java.util.Optional;

/**
 * What is told of one feed: the advice, and what its change does.
 *
 * @param effect of the change on the feed, as a comparison tells it; empty where nothing changes
 * @param bought for a tonne in the bags, now and then; empty where nothing changes
 */
public record LeastCostTold(Advice advice, Optional<RecipeChange> effect, List<Bought> bought) {
  public LeastCostTold {
    bought = List.copyOf(bought);
  }

  /** Whether a change is offered. */
  boolean isOffered() {
    return advice.change().isSome();
  }
}
