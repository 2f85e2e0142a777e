package dev.pellucid.engine.account;

import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Demand;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a feed stands with one side of one limit. Figures are in the unit of the bound in force.
 *
 * @param expected on target and fresh, on average
 * @param expectedAs certainty of that
 * @param judged at the end where it is judged
 * @param shown what is to be shown of it: what is told alone, where only a bound of the rest breaks
 *     the limit
 * @param certainty of what is shown
 * @param bound the one in force, of a waiver where there is one
 * @param unit of all of them
 * @param keptIn the part of all batches that keeps a limit of the law, as lots differ; empty for
 *     other limits and for what is not kept
 */
public record Held(
    Demand demand,
    LimitStatus.State state,
    double expected,
    Certainty expectedAs,
    double judged,
    double shown,
    Certainty certainty,
    double bound,
    UnitWords unit,
    OptionalDouble keptIn) {
  /** So few batches beyond a bound are not worth a word. */
  private static final double A_THOUSANDTH = 0.001;

  /**
   * A unit in words; empty for a plain quotient.
   *
   * @param symbol as it is known
   * @param written with the blank before it, as it is written
   * @param ofParts of a difference, with the blank before it
   */
  public record UnitWords(String symbol, String written, String ofParts) {
    static UnitWords of(Bound.Limit bound) {
      return new UnitWords(bound.unit(), bound.unitAsWritten(), bound.unitOfParts());
    }
  }

  static Held of(LimitStatus status) {
    Verdict verdict = status.verdict();
    Verdict.Shown shown = verdict.shown();
    Reading expected = status.expected();
    Limit limit = status.limit();
    Bound.Limit written = limit.writtenInForce();
    return new Held(
        limit.demand(),
        status.state(),
        written.fromBase(expected.value()),
        expected.certainty(),
        written.fromBase(verdict.judged()),
        written.fromBase(shown.figure()),
        shown.certainty(),
        written.fromBase(limit.inForce()),
        UnitWords.of(written),
        keptIn(status));
  }

  private static OptionalDouble keptIn(LimitStatus status) {
    Optional<LawMargin> margin = LawMargin.of(status);
    return margin.isPresent() ? OptionalDouble.of(margin.get().keeps()) : OptionalDouble.empty();
  }

  /**
   * In which part of all batches a limit of the law is kept: {@code in 97.1 % of batches}; empty
   * for all of them, and where nothing is asked of batches.
   */
  public String batches() {
    return keptIn.isEmpty() || 1 - keptIn.getAsDouble() < A_THOUSANDTH
        ? ""
        : "in " + Figures.fixed(Math.floor(keptIn.getAsDouble() * 1000) / 10, 1) + " % of batches";
  }

  /** How a feed stands with each of its limits, in their order. */
  public static List<Held> all(List<LimitStatus> limits) {
    return limits.stream().map(Held::of).toList();
  }

  /** What it is about. */
  public String subject() {
    return demand.subject();
  }

  /** Whether it could be judged at all. */
  public boolean told() {
    return state.isJudged();
  }

  /** Whether the bound in force is kept, as far as it is told. */
  public boolean keeps() {
    return state.isKept();
  }

  /** Whether the bound of its waiver is kept, and the one that was written is not. */
  public boolean byWaiver() {
    return state.isByWaiver();
  }

  /** Whether it could be judged and is not kept. */
  public boolean broken() {
    return told() && !keeps();
  }

  /** From the bound to the figure that is shown; below zero where that is beyond it. */
  public double left() {
    return from(shown);
  }

  /** {@link #left} as a part of the bound. */
  public double room() {
    return bound == 0 ? left() : left() / Math.abs(bound);
  }

  /**
   * What is left from the figure that is judged, in percent of the bound; below zero where it is
   * broken, without end where the bound is zero.
   */
  public double roomPercent() {
    double room = from(judged);
    return bound == 0 ? (room == 0 ? 0 : Double.POSITIVE_INFINITY * room) : 100 * room / bound;
  }

  private double from(double figure) {
    return demand.side() == Bound.Side.MIN ? figure - bound : bound - figure;
  }
}
