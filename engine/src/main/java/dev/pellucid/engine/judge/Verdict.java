package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;

/**
 * One side of one limit, judged.
 *
 * @param end where it was judged
 * @param reading the figure there, in the base of the limit's kind
 * @param margin what the confidence that is asked for adds to the reading; below zero for a minimum
 * @param keeps whether the bound in force is kept by {@link #judged}; a value within 1e-9 of it
 *     keeps it
 */
public record Verdict(Limit limit, Scenario end, Reading reading, double margin, boolean keeps) {
  /**
   * From this part of a feed on that does not tell a content, a minimum is shown as what is told.
   * Salts and vitamins that do not tell protein are less, and nobody misses it there.
   */
  private static final double A_TRACE = 0.05;

  /** The figure that is held against the bound. */
  public double judged() {
    return reading.value() + margin;
  }

  /** What is left to the bound in force; below zero beyond it. */
  public double room() {
    double over = judged() - limit.inForce();
    return limit.side() == Bound.Side.MIN ? over : -over;
  }

  /** The same figure held against the bound that a waiver stands in for. */
  Verdict withoutWaiver() {
    Limit written = limit.withoutWaiver();
    return new Verdict(
        written, end, reading, margin, Judge.keeps(written.side(), judged(), written.inForce()));
  }

  /** The same without the contents that are not told. */
  private double withoutUntold() {
    return reading.withoutUntold() + margin;
  }

  /**
   * Whether nothing bounds what is not told and could break the limit. It can only raise a sum; a
   * ratio it can move either way.
   */
  boolean isOpen() {
    return reading.unbounded() && (limit.side() == Bound.Side.MAX || limit.subject().isRatio());
  }

  /**
   * Whether what is not told breaks the limit alone. For a maximum, and on both sides of a ratio,
   * it counts as the worst that it can be; a limit that is kept without it is not broken, it cannot
   * be judged.
   */
  boolean untoldBreaks() {
    return !keeps
        && (limit.subject().isRatio() || limit.side() == Bound.Side.MAX)
        && withoutUntold() != judged()
        && keeps(withoutUntold());
  }

  /**
   * A figure to be shown, and how it stands to what is really there.
   *
   * @param figure in the base of the limit's kind
   */
  public record Shown(double figure, Certainty certainty) {}

  /** The figure that is judged, as it would be shown if every bound were a content. */
  public Shown atWorst() {
    return new Shown(judged(), Certainty.TOLD);
  }

  /**
   * The figure to be shown: the one that is judged, but where a bound of what is not told would
   * stand there as if it were a content. Then it is what is told alone, or, where {@code below X}
   * alone breaks a maximum, the most that it can be.
   */
  public Shown shown() {
    boolean max = limit.side() == Bound.Side.MAX;
    if (keeps) {
      return new Shown(judged(), max && reading.unbounded() ? Certainty.AT_LEAST : Certainty.TOLD);
    }
    boolean ratio = limit.subject().isRatio();
    if (!max && !ratio) {
      boolean bounded = reading.unknownShare() == 0 && reading.certainty() != Certainty.TOLD;
      boolean more = bounded || reading.unknownShare() > A_TRACE;
      return new Shown(judged(), more ? Certainty.AT_LEAST : Certainty.TOLD);
    }
    if (reading.sure() == reading.value()) {
      return new Shown(judged(), Certainty.TOLD);
    }
    double sure = reading.sure() + margin;
    boolean toldBreaks = !keeps(withoutUntold());
    if (!keeps(sure) && toldBreaks) {
      return new Shown(sure, ratio ? Certainty.UNSURE : Certainty.AT_LEAST);
    }
    if (toldBreaks) {
      return new Shown(withoutUntold(), max ? Certainty.AT_MOST : Certainty.AT_LEAST);
    }
    return new Shown(sure, ratio ? Certainty.UNSURE : Certainty.AT_LEAST);
  }

  private boolean keeps(double figure) {
    return Judge.keeps(limit.side(), figure, limit.inForce());
  }
}
