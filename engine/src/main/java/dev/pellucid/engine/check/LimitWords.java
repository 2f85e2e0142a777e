package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;

/**
 * The figures of one limit in the unit in which its bound was written, with as many decimals as
 * were written there and never so few that a figure shows less than two digits.
 */
public final class LimitWords {
  private static final int MOST_DECIMALS = 9;

  private final Limit limit;
  private final Bound.Limit written;

  /** The words of one limit. */
  public LimitWords(Limit limit) {
    this.limit = limit;
    this.written = limit.writtenInForce();
  }

  /** The figure and the bound in force, told apart, without unit. */
  Figures.Pair against(double base) {
    double value = written.fromBase(base);
    return Figures.apart(value, written.fromBase(limit.inForce()), decimals(value));
  }

  /** A figure by itself, without unit. */
  String figure(double base) {
    double value = written.fromBase(base);
    return Figures.fixed(value, decimals(value));
  }

  /** With the blank before it: {@code " mg/kg"}; empty for a bare quotient. */
  String unit() {
    return written.unitAsWritten();
  }

  /** For parts of the figure: {@code " points"} where the figure is in percent. */
  String partUnit() {
    return written.unitOfParts();
  }

  /** {@code " on dry matter in 95 % of batches"}; empty for the plain case. */
  String terms() {
    return limit.basis().words()
        + (limit.inBatches().isPresent()
            ? " in " + Figures.plain(limit.inBatches().getAsDouble() * 100) + " % of batches"
            : "");
  }

  /**
   * What the limit is called in its recipe, without its figure, so that it keeps its name when the
   * figure changes: {@code crude-protein min in 95 % of batches (catfish-grower)}.
   */
  public String name() {
    return limit.subject().text()
        + " "
        + limit.side().word()
        + terms()
        + " ("
        + limit.origin().name()
        + ")";
  }

  private int decimals(double value) {
    int decimals = Math.max(1, written.figure().scale());
    while (value != 0 && decimals < MOST_DECIMALS && tooFew(value, decimals)) {
      decimals++;
    }
    return decimals;
  }

  private static boolean tooFew(double value, int decimals) {
    return Math.abs(value) * Math.pow(10, decimals) < 10;
  }
}
