package dev.pellucid.engine.goal;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Rebalanced;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.resolve.ResolvedRecipe;

/** The plan of a batch says where it has other shares than its recipe. */
final class RebalancedPlan {
  private RebalancedPlan() {}

  /**
   * The plan as it is for a batch by its recipe.
   *
   * @param recipe as it is written
   */
  static BatchPlan of(
      BatchPlan plan,
      ResolvedRecipe recipe,
      BatchRecordCheck.Planned batch,
      BatchRecordCheck records) {
    return batch
        .record()
        .rebalanced()
        .map(
            told ->
                plan.rebalanced(
                    Rebalanced.of(told, recipe, batch.ordered(), records.measured(batch.record()))))
        .orElse(plan);
  }
}
