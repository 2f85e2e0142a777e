package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Source;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One side of one limit that a recipe is held to.
 *
 * @param bound the figure not to pass, in the base of its kind (a plain quotient for a ratio)
 * @param written as it stands in the file
 * @param inBatches the part of batches that must keep it, where confidence is asked for
 * @param waiver what stands in its place until a day
 */
public record Limit(
    Subject subject,
    Bound.Side side,
    double bound,
    Bound.Limit written,
    Basis basis,
    OptionalDouble inBatches,
    Origin origin,
    Optional<Waiver> waiver) {

  /**
   * Who asks for it.
   *
   * @param name the profile, or the code of the recipe
   * @param span where the bound is written
   */
  public record Origin(Kind kind, String name, Optional<Source> source, Span span) {}

  /** What kind of demand it is. */
  public enum Kind {
    /** What the fish needs. */
    NEED,
    /** What the trade holds to be good. */
    PRACTICE,
    /** What the jurisdiction demands; nothing loosens it. */
    LAW,
    /** What an authority advises and does not demand; it is looked at and may be passed. */
    GUIDANCE,
    /** What the recipe asks of itself. */
    RECIPE;

    /** Whether feeds are held to it that never name it, by species and jurisdiction. */
    public boolean bindsByItself() {
      return this == LAW || this == GUIDANCE;
    }

    /** How grave it is to break it. */
    public Severity broken() {
      return this == GUIDANCE ? Severity.WARNING : Severity.ERROR;
    }

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The same limit as if nothing stood in its place. */
  public Limit withoutWaiver() {
    return waiver.isEmpty()
        ? this
        : new Limit(subject, side, bound, written, basis, inBatches, origin, Optional.empty());
  }

  /** The same limit, asked in another part of all batches; empty: on average alone. */
  public Limit askedIn(OptionalDouble part) {
    return new Limit(subject, side, bound, written, basis, part, origin, waiver);
  }

  /** What it asks, in words. */
  public Demand demand() {
    return Demand.of(this);
  }

  /** What it is called in its recipe, the same whatever its figure. */
  public String name() {
    return Demand.name(this);
  }

  /** The bound in force: the waiver's while there is one. */
  public double inForce() {
    return waiver.isPresent() ? waiver.get().bound() : bound;
  }

  /** The bound in force, as it was written. */
  public Bound.Limit writtenInForce() {
    return waiver.isPresent() ? waiver.get().written() : written;
  }
}
