package dev.pellucid.engine.trend;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.OptionalDouble;

/**
 * One figure that was found of one batch, beside what was expected of that batch. Figures are in
 * the base of their kind.
 *
 * @param name by which figures of several batches are the same: {@code crude-protein}
 * @param title for people: {@code Crude protein}
 * @param unit in which people read it
 * @param expected empty where nothing says it; then the mean of its batches stands for it
 * @param spread one standard deviation of found less expected; empty where it is not known
 * @param counts whether it is taken for what was found, and not for a slip of the pen
 * @param place where the figure stands
 */
public record Measured(
    What what,
    String name,
    String title,
    Unit unit,
    double found,
    OptionalDouble expected,
    OptionalDouble spread,
    boolean counts,
    Span place) {

  /** What kind of figure it is; in this order they are shown. */
  public enum What {
    /** The last moisture that was read while drying, against the moisture that is aimed at. */
    DRYER,
    /** The moisture that the laboratory found, against that of the meter. */
    MOISTURE,
    /** A content that the laboratory found, against that of the feed as it was made. */
    CONTENT,
    /** What came into the bags, as a part of what was to come out of what was weighed. */
    YIELD,
    /** Pellets that are left after tumbling. */
    DURABILITY,
    /** How unevenly the mix holds a tracer. */
    EVENNESS;

    /** Whether a laboratory found it, and not the mill. */
    public boolean ofLaboratory() {
      return this == MOISTURE || this == CONTENT;
    }
  }

  /** A slip of the pen; it is shown and moves nothing. */
  public Measured asSlip() {
    return new Measured(what, name, title, unit, found, expected, spread, false, place);
  }
}
