package dev.pellucid.engine.linear;

/**
 * An amount that is to be found.
 *
 * @param low the least that it may be, which may be infinite
 * @param high the most that it may be, which may be infinite; where it is below the least, nothing
 *     meets both, and that is an outcome and no mistake
 * @param cost what one of it costs
 * @param orZero whether it may also be nothing at all
 * @param step where above zero, the amount is a whole multiple of it; zero is any amount
 */
public record Variable(double low, double high, double cost, boolean orZero, double step) {
  public Variable {
    Bounds.check(low, high);
    if (!Double.isFinite(cost)) {
      throw new IllegalArgumentException("a cost of " + cost);
    }
    if (!(step >= 0) || Double.isInfinite(step)) {
      throw new IllegalArgumentException("a step of " + step);
    }
  }

  /** Any amount between two bounds. */
  public static Variable of(double low, double high, double cost) {
    return new Variable(low, high, cost, false, 0);
  }

  public Variable between(double newLow, double newHigh) {
    return new Variable(newLow, newHigh, cost, orZero, step);
  }

  public Variable at(double newCost) {
    return new Variable(low, high, newCost, orZero, step);
  }

  /** Whether a choice is to be made about it that is not one of amount alone. */
  boolean isChosen() {
    return step > 0 || orZero && (low > 0 || high < 0);
  }

  /** Any amount between the least and the most that may be chosen. */
  Variable relaxed() {
    return orZero ? of(Math.min(low, 0), Math.max(high, 0), cost) : of(low, high, cost);
  }

  /** Any amount as far as the choice that this value makes leaves it free. */
  Variable chosen(double value) {
    boolean isFixed = step > 0 || isChosen() && value == 0;
    return isFixed ? of(value, value, cost) : of(low, high, cost);
  }
}
