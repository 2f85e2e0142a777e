package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Densities;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import java.util.Optional;

/** Brings batches onto the scales of a plant, which are looked at once for all of them. */
public final class WeighingPlanner {
  private static final double MICRO_ERROR = 0.01;
  private static final double MACRO_ERROR = 0.01;
  private static final double DILUTED_PART = 0.1;

  private final Plant plant;
  private final Densities densities;
  private final Weigher micro;
  private final Weigher macro;
  private final Diluter diluter;

  private WeighingPlanner(Plant plant, Practice practice) {
    this.plant = plant;
    this.densities = practice.densities();
    this.micro = weigher(practice, BoundOf.WEIGHING_MICRO, MICRO_ERROR);
    this.macro = weigher(practice, BoundOf.WEIGHING_MACRO, MACRO_ERROR);
    double part =
        practice.bound(BoundOf.DILUTION_STEP).map(PracticeBound::low).orElse(DILUTED_PART);
    this.diluter = new Diluter(micro, part > 0 ? 1 / part : 1 / DILUTED_PART);
  }

  /** Of one plant; empty where it tells no scale. */
  public static Optional<WeighingPlanner> of(Plant plant, Practice practice) {
    return plant.scales().isEmpty()
        ? Optional.empty()
        : Optional.of(new WeighingPlanner(plant, practice));
  }

  /**
   * The plan of one batch at the plant of its recipe; empty where there is none, or it tells no
   * scale.
   *
   * @param kg weighed, before overage and water
   */
  public static Optional<WeighingPlan> plan(ComputedFeed feed, double kg, FeedTables tables) {
    return feed.recipe()
        .plant()
        .flatMap(plant -> of(plant, tables.practice()))
        .flatMap(planner -> planner.plan(feed, kg));
  }

  private Weigher weigher(Practice practice, BoundOf bound, double otherwise) {
    double allowed = practice.bound(bound).map(PracticeBound::high).orElse(otherwise);
    return new Weigher(plant.scales(), plant.mostWeighings(), allowed);
  }

  /** Whose scales they are. */
  public Plant plant() {
    return plant;
  }

  /**
   * The plan of a batch; empty of no batch.
   *
   * @param kg weighed, before overage and water
   */
  public Optional<WeighingPlan> plan(ComputedFeed feed, double kg) {
    return kg > 0 ? Optional.of(new BatchPlanning(this, feed, kg).plan()) : Optional.empty();
  }

  /** What the lines of a batch come to on its scales with other shares; empty of no batch. */
  public Optional<Reweighed> reweighed(ComputedFeed feed, double kg) {
    return kg > 0 ? Optional.of(new Reweighed(this, feed, kg)) : Optional.empty();
  }

  Densities densities() {
    return densities;
  }

  /** For what is weighed apart. */
  Weigher micro() {
    return micro;
  }

  /** For all else. */
  Weigher macro() {
    return macro;
  }

  Diluter diluter() {
    return diluter;
  }
}
