package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Tolerance.Side;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Label.Claim;
import dev.pellucid.engine.resolve.Label.Manner;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;

/** The figures of one verdict in the unit in which the label declares. */
public final class LabelWords {
  private static final int MOST_DECIMALS = 9;

  private final LabelVerdict verdict;
  private final Claim claim;
  private final Unit unit;

  /** The words of one verdict. */
  public LabelWords(LabelVerdict verdict) {
    this.verdict = verdict;
    this.claim = verdict.claim();
    this.unit = claim.written().unit();
  }

  /** {@code crude-protein is 32.4 % and the label says 36 %}. */
  public String headline() {
    return claim.nutrient().name()
        + " is "
        + apart().value()
        + " "
        + unit.symbol()
        + (verdict.atTheEnd() ? " at the end of its shelf life" : "")
        + ", the label says "
        + said();
  }

  /** {@code at least 36 %}. */
  String said() {
    return manner() + claim.written().asWritten();
  }

  private String manner() {
    return switch (claim.manner()) {
      case DECLARED -> "";
      case AT_LEAST -> "at least ";
      case AT_MOST -> "at most ";
    };
  }

  /** How far the feed lies off the label, and what is taken: {@code 1.2 of 3.0 points}. */
  String spent() {
    double off = Math.abs(verdict.figure() - claim.base());
    Figures.Pair pair =
        Figures.apart(
            unit.fromBase(off), unit.fromBase(verdict.allowed().orElse(0)), decimals(off));
    return pair.value() + " of " + pair.other() + parts();
  }

  /** Where the tolerance ends: {@code 33.0 %}. */
  String end() {
    double allowed = verdict.allowed().orElse(0);
    double end = claim.base() + (verdict.side() == Side.BELOW ? -allowed : allowed);
    return Figures.apart(
                unit.fromBase(end), unit.fromBase(verdict.figure()), decimals(claim.base()))
            .value()
        + " "
        + unit.symbol();
  }

  /** What the label could say: what lasts, with about as many digits as the label has. */
  String instead() {
    double figure = unit.fromBase(verdict.lasting());
    int decimals = figure >= 100 ? claim.written().figure().scale() : decimals(claim.base());
    double step = Math.pow(10, -decimals);
    double rounded =
        switch (claim.manner()) {
          case DECLARED -> figure;
          case AT_LEAST -> Closeness.down(figure / step) * step;
          case AT_MOST -> Closeness.up(figure / step) * step;
        };
    String side = claim.manner() == Manner.DECLARED ? "" : bound() + " ";
    return side + Figures.fixed(rounded, decimals) + " " + claim.written().unitAsWritten();
  }

  private String bound() {
    return claim.manner() == Manner.AT_LEAST ? "min" : "max";
  }

  private Figures.Pair apart() {
    return Figures.apart(
        unit.fromBase(verdict.figure()), unit.fromBase(claim.base()), decimals(claim.base()));
  }

  private String parts() {
    return unit == Unit.PERCENT ? " points" : " " + unit.symbol();
  }

  /** As many as the label has, and never so few that a figure shows less than two digits. */
  private int decimals(double base) {
    double value = unit.fromBase(base);
    int decimals = Math.max(1, claim.written().figure().scale());
    while (value != 0
        && decimals < MOST_DECIMALS
        && Math.abs(value) * Math.pow(10, decimals) < 10) {
      decimals++;
    }
    return decimals;
  }
}
