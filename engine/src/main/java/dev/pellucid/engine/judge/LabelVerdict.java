package dev.pellucid.engine.judge;

import dev.pellucid.engine.data.Tolerance;
import dev.pellucid.engine.resolve.Label.Claim;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One figure of a label, judged.
 *
 * @param side on which the feed lies off the label
 * @param figure of the feed on that side, in the base of the nutrient's kind
 * @param lasting what is there until the end of shelf life: what a label can promise
 * @param atTheEnd whether that figure is the one at the end of shelf life
 * @param allowed the difference that the tolerance takes on that side; empty where any is
 * @param tolerance the rule, where there is one
 */
public record LabelVerdict(
    Claim claim,
    Outcome outcome,
    Tolerance.Side side,
    double figure,
    double lasting,
    boolean atTheEnd,
    OptionalDouble allowed,
    Optional<Tolerance> tolerance) {

  /** What came of it, the graver later. */
  public enum Outcome {
    KEPT,
    /** Within the tolerance, but further off than a rounded label is. */
    SPENDS,
    /** Ingredients that do not tell the nutrient could bring it in or out. */
    CANNOT_TELL,
    /** Outside it. */
    BEYOND,
    /** A declaration for which the rules tell no tolerance. */
    NO_TOLERANCE
  }

  /** The graver of two. */
  LabelVerdict orGraver(LabelVerdict other) {
    return other.outcome.compareTo(outcome) > 0 ? other : this;
  }
}
