package dev.pellucid.syntax;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;

/** {@code 10 to 20 %}: both ends in one unit. */
public record Range(Numeral low, Numeral high, Unit unit, Word unitAsWritten, Span span) {
  /** The low end in the base of the unit's kind. */
  public double lowBase() {
    return unit.toBase(low.nearest());
  }

  /** The high end in the base of the unit's kind. */
  public double highBase() {
    return unit.toBase(high.nearest());
  }

  /** Whether the low end is above the high end. */
  public boolean isReversed() {
    double from = low.nearest();
    double to = high.nearest();
    return from > to || (from == to && low.value().compareTo(high.value()) > 0);
  }

  public String asWritten() {
    return low.text() + " to " + high.text() + " " + unitAsWritten.text();
  }
}
