package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.Once;
import dev.pellucid.engine.weighing.Reweighed;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import java.util.Optional;

/**
 * The batch of a recipe on the scales of the plant, planned when a rule first asks for it; whoever
 * asks for figures alone pays nothing for it. For one thread.
 */
public final class Floor {
  private final Optional<ComputedFeed> feed;
  private final Optional<WeighingPlanner> planner;
  private final Once<Optional<WeighedBatch>> batch;

  /**
   * @param feed absent where something stands in the way of its figures
   * @param planner absent where the folder tells no scales
   */
  public Floor(Optional<ComputedFeed> feed, Optional<WeighingPlanner> planner) {
    this.feed = feed;
    this.planner = planner;
    this.batch = new Once<>(this::planned);
  }

  /** Of what is on no scales any more. */
  public static Floor none() {
    return new Floor(Optional.empty(), Optional.empty());
  }

  /** What is weighed of it; absent without feed, batch size or scales. */
  public Optional<WeighingPlan> plan() {
    return batch().map(WeighedBatch::plan);
  }

  /** The same batch of a feed with other shares; absent without batch size or scales. */
  public Optional<Reweighed> reweighed(ComputedFeed other) {
    return other.recipe().batch().isPresent()
        ? planner.flatMap(one -> one.reweighed(other, other.weighed(other.recipe().batch().get())))
        : Optional.empty();
  }

  /** Absent without feed, batch size or scales. */
  Optional<WeighedBatch> batch() {
    return batch.get();
  }

  private Optional<WeighedBatch> planned() {
    if (feed.isEmpty() || planner.isEmpty() || feed.get().recipe().batch().isEmpty()) {
      return Optional.empty();
    }
    ComputedFeed written = feed.get();
    double kg = written.weighed(written.recipe().batch().get());
    Optional<WeighingPlan> plan = planner.get().plan(written, kg);
    return plan.map(one -> new WeighedBatch(written, planner.get().plant(), one));
  }
}
