package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;

/**
 * What ingredients do not tell counts, for a maximum and on both sides of a ratio, as the worst
 * that it can be. A limit that is kept without that part is not broken: it cannot be judged.
 */
final class Untold {
  private Untold() {}

  /** Whether the untold part alone breaks a limit. */
  static boolean breaks(Verdict verdict) {
    boolean ratio = verdict.limit().subject() instanceof Subject.Ratio;
    boolean sum = verdict.limit().subject() instanceof Subject.Nutrients;
    return !verdict.keeps()
        && (ratio || (sum && verdict.limit().side() == Bound.Side.MAX))
        && verdict.withoutUntold() != verdict.judged()
        && Judge.keeps(verdict.limit().side(), verdict.withoutUntold(), verdict.limit().inForce());
  }
}
