package dev.pellucid.engine.trend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came into the bags over some batches, in kg and money.
 *
 * @param steps one for each batch that tells it, as they were made
 * @param unpriced how many of them have no price, so that the money leaves them out
 */
public record YieldTotals(List<Step> steps, int unpriced) {
  public YieldTotals {
    steps = List.copyOf(steps);
  }

  /**
   * A batch, with all before it.
   *
   * @param all of this batch and those before, added up
   * @param money lost beyond the plan, of those that have a price
   */
  public record Step(MeasuredBatch batch, BatchYield yields, Sum all, double money) {}

  /** kg, added up. */
  public record Sum(
      double planned, double finished, double expected, double bagged, double setAside) {
    static final Sum NOTHING = new Sum(0, 0, 0, 0, 0);

    Sum plus(BatchYield one) {
      return new Sum(
          planned + one.planned(),
          finished + one.finished(),
          expected + one.expected(),
          bagged + one.bagged(),
          setAside + one.setAside());
    }

    /** kg that left the last machine and came into no bag. */
    public double shrink() {
      return finished - bagged;
    }

    /** kg of it that the plan knew of. */
    public double shrinkPlanned() {
      return finished - expected;
    }

    /** kg that were lost beyond the plan. */
    public double beyond() {
      return expected - bagged;
    }
  }

  static YieldTotals of(List<MeasuredBatch> inOrder) {
    List<Step> steps = new ArrayList<>();
    Sum all = Sum.NOTHING;
    double money = 0;
    int unpriced = 0;
    for (MeasuredBatch batch : inOrder) {
      if (batch.yields().isPresent()) {
        BatchYield one = batch.yields().get();
        all = all.plus(one);
        money += one.moneyBeyond().orElse(0);
        unpriced += one.perKg().isPresent() ? 0 : 1;
        steps.add(new Step(batch, one, all, money));
      }
    }
    return new YieldTotals(steps, unpriced);
  }

  /** All of them together. */
  public Optional<Step> last() {
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
  }
}
