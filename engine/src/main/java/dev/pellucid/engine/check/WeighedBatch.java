package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Once;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.syntax.Bound;
import java.util.Optional;

/** A batch of the recipe as the plant weighs it. */
public final class WeighedBatch {
  private final Plant plant;
  private final WeighingPlan plan;

  /** By what part of it the line is off that is rounded most. */
  private final double partOff;

  private final Once<Optional<Readings>> asRounded;

  /**
   * @param written the feed as it is written
   */
  WeighedBatch(ComputedFeed written, Plant plant, WeighingPlan plan) {
    this.plant = plant;
    this.plan = plan;
    Weighing rounded = plan.asRounded(written.recipe());
    this.partOff = written.weighing().partOff(rounded);
    this.asRounded = new Once<>(() -> written.weighed(rounded).feed().map(Readings::new));
  }

  /** The plant on whose scales it is weighed. */
  public Plant plant() {
    return plant;
  }

  /** What is weighed. */
  public WeighingPlan plan() {
    return plan;
  }

  /**
   * How the feed stands with a limit once its weights are rounded, where rounding could break it at
   * all; else, and where something then stands in the way of its figures, empty.
   *
   * @param kept the figure as written, which keeps the limit
   */
  Optional<Verdict> asRounded(Verdict kept) {
    if (isFarFromBound(kept)) {
      return Optional.empty();
    }
    return asRounded.get().map(read -> Judge.verdict(read, kept.limit()));
  }

  /**
   * Whether no rounding can take a figure past its bound. All that a figure is made of, and all
   * that it is held over, grows in step with the weights, for steps take up and give off water by
   * shares of the mass: so neither moves by a larger part than the weight that was rounded most.
   * Twice that part is left, and only what is nearer to its bound is computed again.
   */
  boolean isFarFromBound(Verdict kept) {
    double part = 2 * partOff;
    if (part >= 1) {
      return false;
    }
    double times = (1 + part) / (1 - part);
    double figure = kept.reading().value();
    double margin = Math.abs(kept.margin()) * times;
    Limit limit = kept.limit();
    return limit.side() == Bound.Side.MIN
        ? Judge.keeps(limit.side(), figure / times - margin, limit.inForce())
        : Judge.keeps(limit.side(), figure * times + margin, limit.inForce());
  }
}
