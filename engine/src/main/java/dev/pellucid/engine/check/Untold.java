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
        || !(verdict.limit().subject() instanceof Subject.Nutrients)) {
      return false;
    }
    double told = told(feed, verdict);
    double bound = verdict.limit().inForce();
    return told < verdict.judged() && told <= bound + CLOSE * Math.abs(bound);
  }

  /** What a sum comes to without what ingredients do not tell, as it is judged. */
  static double told(ComputedFeed feed, Verdict verdict) {
    Subject.Nutrients sum = (Subject.Nutrients) verdict.limit().subject();
    double whole = 0;
    double untold = 0;
    for (Row row : feed.rows()) {
      for (Nutrient nutrient : sum.nutrients()) {
        double amount = row.amount(verdict.end(), nutrient.index());
        whole += amount;
        untold += row.composition().unknown().get(nutrient.index()) ? amount : 0;
      }
    }
    return verdict.judged() - verdict.reading().value() * (whole > 0 ? untold / whole : 0);
  }
}
