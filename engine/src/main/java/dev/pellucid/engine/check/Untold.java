package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;

/**
 * What ingredients do not tell counts, for a maximum, as the most that it can be. A maximum that is
 * kept without that part is not broken: it cannot be judged.
 */
final class Untold {
  private static final double CLOSE = 1e-9;

  private Untold() {}

  /** Whether the untold part alone breaks a maximum. */
  static boolean breaks(ComputedFeed feed, Verdict verdict) {
    if (verdict.keeps()
        || verdict.limit().side() != Bound.Side.MAX
        || !(verdict.limit().subject() instanceof Subject.Nutrients sum)) {
      return false;
    }
    double whole = 0;
    double untold = 0;
    for (Row row : feed.rows()) {
      for (Nutrient nutrient : sum.nutrients()) {
        double amount = row.amount(verdict.end(), nutrient.index());
        whole += amount;
        untold += row.composition().unknown().get(nutrient.index()) ? amount : 0;
      }
    }
    double told = verdict.judged() - verdict.reading().value() * (whole > 0 ? untold / whole : 0);
    double bound = verdict.limit().inForce();
    return untold > 0 && told <= bound + CLOSE * Math.abs(bound);
  }
}
