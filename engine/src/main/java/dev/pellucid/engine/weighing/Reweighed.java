package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What lines of a planned batch would come to on the same scales, if their shares were others; in
 * points, kg of a share as written per 100 kg of recipe. Loads stay, and what dilutions take; what
 * is held more for stability by other lines is left out of that of the rest.
 */
public final class Reweighed {
  /** Shares are written with fewer decimals than this has zeros. */
  private static final double DECIMALS = 1e9;

  private final WeighingPlanner at;
  private final double kg;
  private final double times;
  private final WeighingPlan plan;
  private final BitSet small;
  private final Map<Integer, WeighingLine> planned = new HashMap<>();

  Reweighed(WeighingPlanner at, ComputedFeed feed, double kg) {
    this.at = at;
    this.kg = kg;
    this.times = kg / 100;
    this.plan = new BatchPlanning(at, feed, kg).plan();
    this.small = SmallLines.of(feed);
    List<WeighingLine> all = new ArrayList<>(plan.mix());
    all.addAll(plan.coat());
    all.forEach(line -> planned.put(line.line().index(), line));
  }

  /** What a line with this share is weighed as; the share itself where it cannot be weighed. */
  public double points(Line line, double share) {
    WeighingLine as = planned.get(line.index());
    if (as == null || share <= 0) {
      return share;
    }
    Line known = as.line();
    if (share == known.designed().kgPer100()) {
      return share * as.ratio();
    }
    double target = target(known, share);
    Optional<Weight> weight = weigher(line).place(target - as.taken()).placed();
    return weight.isPresent() ? share * (weight.get().total() + as.taken()) / target : share;
  }

  /** By how many points the share of a line goes up at least, so that its scale shows it. */
  public double step(Line line, double share) {
    WeighingLine as = planned.get(line.index());
    if (as == null || share <= 0) {
      return 0;
    }
    double target = target(as.line(), share);
    return share * weigher(line).step(target - as.taken()) / target;
  }

  private Weigher weigher(Line line) {
    return small.get(line.index()) ? at.micro() : at.macro();
  }

  /** By the very steps by which the batch was planned, so that halves are rounded as there. */
  private double target(Line line, double share) {
    double written = line.designed().kgPer100();
    double exact = Math.rint(share * DECIMALS) / DECIMALS;
    if (written <= 0) {
      return exact * times / plan.weighings(line);
    }
    double inFeed = line.share().kgPer100() == written ? exact : exact * inFeed(line, written);
    double onTop = line.hasOnTop() ? line.onTopKg(kg, plan.weighings(line)) * exact / written : 0;
    return (inFeed * times + onTop) / plan.weighings(line);
  }

  private static double inFeed(Line line, double written) {
    return line.rest() ? 1 : line.share().kgPer100() / written;
  }
}
