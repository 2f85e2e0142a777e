package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.weighing.WeighingPlan;
import java.util.List;

/**
 * A batch of the recipe as the plant weighs it.
 *
 * @param asRounded one verdict for each limit of the recipe, on the feed as it is weighed after
 *     rounding
 */
public record WeighedBatch(Plant plant, WeighingPlan plan, List<Verdict> asRounded) {
  public WeighedBatch {
    asRounded = List.copyOf(asRounded);
  }
}
