package dev.pellucid.engine.compare;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compare.RecipeChange.CostMoved;
import dev.pellucid.engine.compare.RecipeChange.How;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import java.util.OptionalDouble;

/**
 * What moves by less than a thousandth of itself and of its room to the nearest limit: for scripts
 * it is told, and a person is spared it. A limit that turns is never slight.
 */
public final class Slight {
  private static final double PART = 0.001;

  private Slight() {}

  /** A nutrient; a limit on it is in another unit or on another basis, so parts are compared. */
  public static boolean is(Moved one) {
    double part = part(one.before(), one.after());
    return part < PART && (one.nearest().isEmpty() || withinRoom(part, one.nearest().get()));
  }

  private static boolean withinRoom(double part, Held limit) {
    return part * Math.abs(limit.expected()) < PART * Math.abs(limit.left());
  }

  /** A limit where it is judged. */
  public static boolean is(LimitMoved one) {
    double before = one.before().shown();
    double after = one.after().shown();
    return part(before, after) < PART
        && Math.abs(after - before) < PART * Math.abs(one.after().left());
  }

  /** What a line adds to the cost of a kg. */
  static boolean is(CostMoved one, double costPerKg) {
    return Math.abs(one.moved()) < PART * costPerKg;
  }

  /** What a kg costs. */
  public static boolean cost(RecipeChange change) {
    OptionalDouble before = change.costBefore();
    OptionalDouble after = change.costAfter();
    if (before.isEmpty() || after.isEmpty()) {
      return false;
    }
    boolean nearLimit = false;
    for (LimitMoved limit : change.effectOrNone().judged()) {
      nearLimit |= limit.after().subject().equals("cost") && !is(limit);
    }
    return !nearLimit
        && change.effectOrNone().turnsNone()
        && part(before.getAsDouble(), after.getAsDouble()) < PART;
  }

  /** All that a change does to a feed. */
  public static boolean is(RecipeChange change) {
    if (change.how() != How.BY_DATA
        || !change.findings().isNone()
        || !change.printed().isNone()
        || !change.effectOrNone().movesFiguresAlone()
        || !cost(change)) {
      return false;
    }
    Effect effect = change.effectOrNone();
    for (Moved one : effect.moved()) {
      if (!is(one)) {
        return false;
      }
    }
    for (LimitMoved one : effect.judged()) {
      if (!is(one)) {
        return false;
      }
    }
    for (CostMoved one : effect.costs()) {
      if (!is(one, change.costAfter().orElse(0))) {
        return false;
      }
    }
    return true;
  }

  private static double part(double before, double after) {
    double largest = Math.max(Math.abs(before), Math.abs(after));
    return largest == 0 ? 0 : Math.abs(after - before) / largest;
  }
}
