package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.Optional;

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

  /**
   * The figure beside the bound in force, told apart: {@code 33.1 % on dry matter, the minimum is
   * 35.0 %}.
   *
   * @param after what is said behind the figure and its unit
   */
  String against(RuleContext recipe, double base, String after) {
    return against(recipe.tables().settings().jurisdiction(), base, after);
  }

  /** The same for whoever knows the jurisdiction of the folder alone. */
  public String against(Optional<String> jurisdiction, double base, String after) {
    Figures.Pair figures = against(base);
    return figures.value()
        + unit()
        + after
        + ", the "
        + bound(jurisdiction)
        + " is "
        + figures.other()
        + unit();
  }

  private String bound(Optional<String> jurisdiction) {
    String word = limit.side() == Bound.Side.MIN ? "minimum" : "maximum";
    if (limit.waiver().isPresent()) {
      return word + " under its waiver";
    }
    String where = jurisdiction.map(j -> " (" + j + ")").orElse("");
    return switch (limit.origin().kind()) {
      case LAW -> "legal " + word + where;
      case GUIDANCE -> "guidance " + word + where;
      case NEED, PRACTICE, RECIPE -> word;
    };
  }

  /** The figure as it is told beside the bound in force, without unit. */
  String besideBound(double base) {
    return against(base).value();
  }

  private Figures.Pair against(double base) {
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
    return limit.demand().terms();
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
