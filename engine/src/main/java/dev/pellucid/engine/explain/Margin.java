package dev.pellucid.engine.explain;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.syntax.Bound;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The steps from a figure at one end to the room that is left, with so many digits that each step
 * is right as it is printed: {@code 35.84 - 1.01 = 34.83}, and {@code 1.01 = 1.645 × 0.614}.
 *
 * @param at the figure at the end where it is judged
 * @param deviation one standard deviation
 * @param margin so many deviations as are asked for; zero where none are
 * @param judged what is held against the bound
 * @param room from the bound to it, below zero beyond it
 */
record Margin(
    BigDecimal at, BigDecimal deviation, BigDecimal margin, BigDecimal judged, BigDecimal room) {
  private static final int MOST_DECIMALS = 9;

  private static final int QUANTILE_DECIMALS = 3;

  /** How many more digits than the margin a deviation may take. */
  private static final int MORE = 4;

  /**
   * What is to be shown.
   *
   * @param at in the unit of the bound, as the others
   * @param margin without a sign
   * @param quantile how many deviations the margin is, as it is printed
   */
  record Steps(
      double at,
      double deviation,
      double margin,
      BigDecimal quantile,
      Bound.Side side,
      BigDecimal bound,
      boolean keeps) {

    double judged() {
      return side == Bound.Side.MIN ? at - margin : at + margin;
    }
  }

  /** The quantile as it is printed: so many deviations are asked for. */
  static BigDecimal quantile(LimitStatus status) {
    double deviation = status.verdict().reading().deviation();
    double quantile = deviation > 0 ? Math.abs(status.verdict().margin()) / deviation : 0;
    return BigDecimal.valueOf(quantile).setScale(QUANTILE_DECIMALS, RoundingMode.HALF_EVEN);
  }

  /** Of one limit, in the unit of its bound in force. */
  static Margin of(LimitStatus status) {
    Bound.Limit bound = status.limit().writtenInForce();
    double at = bound.fromBase(status.verdict().reading().value());
    Steps steps =
        new Steps(
            at,
            bound.fromBase(status.verdict().reading().deviation()),
            Math.abs(bound.fromBase(status.verdict().margin())),
            quantile(status),
            status.limit().side(),
            bound.figure(),
            status.verdict().keeps());
    return of(steps, Figures.decimals(at));
  }

  /**
   * {@code 35.84 - 1.01 = 34.83}.
   *
   * @param steps whether more than the last figure is to be shown
   */
  String inWords(boolean steps) {
    String sign = judged.compareTo(at) > 0 ? " + " : " - ";
    return steps
        ? at.toPlainString() + sign + margin.toPlainString() + " = " + judged.toPlainString()
        : judged.toPlainString();
  }

  /** With the fewest decimals, from {@code decimals} on, with which all steps agree. */
  static Margin of(Steps steps, int decimals) {
    int from = Math.min(MOST_DECIMALS, Math.max(decimals, steps.bound().scale()));
    for (int enough = from; enough < MOST_DECIMALS; enough++) {
      Margin tried = with(steps, enough);
      if (tried.agrees(steps)) {
        return tried;
      }
    }
    return with(steps, MOST_DECIMALS);
  }

  private static Margin with(Steps steps, int decimals) {
    BigDecimal at = rounded(steps.at(), decimals);
    BigDecimal judged = rounded(steps.judged(), decimals);
    BigDecimal margin = at.subtract(judged).abs();
    BigDecimal room =
        steps.side() == Bound.Side.MIN
            ? judged.subtract(steps.bound())
            : steps.bound().subtract(judged);
    return new Margin(at, deviation(steps, margin), margin, judged, room);
  }

  /** With the fewest digits that give the margin as it is printed. */
  private static BigDecimal deviation(Steps steps, BigDecimal margin) {
    BigDecimal tried = rounded(steps.deviation(), margin.scale());
    for (int more = 1; more <= MORE && !gives(steps, tried, margin); more++) {
      tried = rounded(steps.deviation(), Math.min(MOST_DECIMALS, margin.scale() + more));
    }
    return tried;
  }

  private static boolean gives(Steps steps, BigDecimal deviation, BigDecimal margin) {
    BigDecimal product = steps.quantile().multiply(deviation);
    return rounded(product.doubleValue(), margin.scale()).compareTo(margin) == 0;
  }

  private boolean agrees(Steps steps) {
    boolean margins = steps.deviation() == 0 || gives(steps, deviation, margin);
    return margins && steps.keeps() == (room.signum() >= 0);
  }

  private static BigDecimal rounded(double value, int decimals) {
    return new BigDecimal(Figures.fixed(value, decimals));
  }
}
