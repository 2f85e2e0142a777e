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
  /** How near to what may be chosen is chosen, in parts of the step or of the bound. */
  private static final double NEAR = 1e-9;

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

  /** Its bound that is nearer to zero, where it may also be nothing at all; else zero. */
  private double edge() {
    if (!orZero) {
      return 0;
    }
    return low > 0 ? low : Math.min(high, 0);
  }

  /** How far a value is from what may be chosen, from zero to a half. */
  double off(double value) {
    double edge = edge();
    double part = edge == 0 ? 1 : value / edge;
    if (part > NEAR && part < 1 - NEAR) {
      return Math.min(part, 1 - part);
    }
    if (step == 0) {
      return 0;
    }
    double multiple = value / step;
    double off = Math.abs(multiple - Math.rint(multiple));
    return off > NEAR * Math.max(1, Math.abs(multiple)) ? off : 0;
  }

  /** What may be chosen, of a value that is next to it. */
  double nearest(double value) {
    double edge = edge();
    if (edge != 0 && value / edge <= NEAR) {
      return 0;
    }
    return step > 0 ? Math.rint(value / step) * step : value;
  }

  /**
   * The two parts of it on both sides of a value that may not be chosen; the nearer is the first.
   */
  Variable[] parted(double value) {
    double edge = edge();
    double part = edge == 0 ? 1 : value / edge;
    if (part < 1 - NEAR) {
      return ordered(of(0, 0, cost), of(low, high, cost), part < 0.5);
    }
    double multiple = value / step;
    double below = Math.floor(multiple);
    Variable down = of(Double.NEGATIVE_INFINITY, below * step, cost);
    Variable up = of((below + 1) * step, Double.POSITIVE_INFINITY, cost);
    return ordered(down, up, multiple - below < 0.5);
  }

  private static Variable[] ordered(Variable one, Variable other, boolean isOneFirst) {
    return isOneFirst ? new Variable[] {one, other} : new Variable[] {other, one};
  }

  /** What is left of it between the bounds of another. */
  Variable within(Variable bounds) {
    return of(Math.max(low, bounds.low), Math.min(high, bounds.high), cost);
  }
}
