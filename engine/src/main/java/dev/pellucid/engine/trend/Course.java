package dev.pellucid.engine.trend;

import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One figure of a recipe from batch to batch: how far each is off what was expected, in spreads,
 * and where that is no longer left to chance.
 *
 * <p>Each batch is held against what was expected of itself, so that batches of a recipe that was
 * changed between them lie on one course. Where nothing says what to expect, the mean of the
 * batches stands for it. The spread is that of each batch where all tell one, else the one that the
 * course shows by itself.
 *
 * @param scale where spreads come from
 * @param around where the centre comes from
 * @param spots of batches that tell the figure, as they were made; slips are left out
 * @param runs where a rule speaks, in the order of spots
 * @param left of batches that tell it and do not count, as they were made
 */
public record Course(
    Measured.What what,
    String name,
    String title,
    Unit unit,
    Scale scale,
    Around around,
    List<Spot> spots,
    List<Run> runs,
    List<Spot> left) {

  /** Where the spread of a course comes from. */
  public enum Scale {
    /** Each batch tells its own. */
    TOLD,
    /** The batches show it. */
    OWN,
    /** Nothing tells it, and there are too few batches to show it. */
    NOT_KNOWN
  }

  /** Where the centre of a course comes from. */
  public enum Around {
    EXPECTED,
    OWN_MEAN
  }

  public Course {
    spots = List.copyOf(spots);
    runs = List.copyOf(runs);
    left = List.copyOf(left);
  }

  /** A batch and its place among those of its recipe. */
  record Placed(int place, MeasuredBatch batch, Measured figure) {}

  /** The course of figures of one name, as their batches were made. */
  static Course of(List<Placed> inOrder) {
    Measured first = inOrder.get(0).figure();
    boolean expected = inOrder.stream().anyMatch(one -> one.figure().expected().isPresent());
    List<Placed> counted = new ArrayList<>();
    List<Spot> left = new ArrayList<>();
    for (Placed one : inOrder) {
      boolean counts = one.figure().counts() && (!expected || one.figure().expected().isPresent());
      if (counts) {
        counted.add(one);
      } else {
        left.add(spot(one, one.figure().expected().orElse(one.figure().found()), false, 0));
      }
    }
    double mean = counted.stream().mapToDouble(one -> one.figure().found()).average().orElse(0);
    boolean told = counted.stream().allMatch(one -> one.figure().spread().isPresent());
    OptionalDouble own = told ? OptionalDouble.empty() : OwnSpread.of(offs(counted, mean));
    List<Spot> spots = new ArrayList<>();
    for (Placed one : counted) {
      spots.add(spot(one, one.figure().expected().orElse(mean), own.isEmpty(), own.orElse(0)));
    }
    boolean judged = expected || spots.size() >= OwnSpread.FEWEST;
    return new Course(
        first.what(),
        first.name(),
        first.title(),
        first.unit(),
        told && !spots.isEmpty() ? Scale.TOLD : own.isPresent() ? Scale.OWN : Scale.NOT_KNOWN,
        expected ? Around.EXPECTED : Around.OWN_MEAN,
        spots,
        judged ? RunRules.in(spots) : List.of(),
        left);
  }

  private static List<Double> offs(List<Placed> counted, double mean) {
    return counted.stream()
        .map(one -> one.figure().found() - one.figure().expected().orElse(mean))
        .toList();
  }

  /**
   * @param told whether its own spread counts
   * @param spread that counts otherwise; none where it is zero
   */
  private static Spot spot(Placed one, double centre, boolean told, double spread) {
    double off = one.figure().found() - centre;
    double by = told ? one.figure().spread().orElse(0) : spread;
    return new Spot(
        one.place(),
        one.batch(),
        one.figure(),
        centre,
        off,
        by > 0 ? OptionalDouble.of(off / by) : OptionalDouble.empty());
  }

  /** Where rules speak at a spot, counted from 0. */
  public List<Run> at(int spot) {
    return runs.stream().filter(run -> run.to() == spot).toList();
  }

  /** Where rules speak at the last batch that counts: what goes on now. */
  public List<Run> now() {
    return at(spots.size() - 1);
  }
}
