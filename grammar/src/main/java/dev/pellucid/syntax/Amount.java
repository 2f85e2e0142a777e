package dev.pellucid.syntax;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.math.BigDecimal;

/** A number with its unit: {@code 18.00 %}, {@code 1.25 EUR/kg}. */
public record Amount(Numeral number, Unit unit, Word unitAsWritten, Span span) {
  /** The exact figure, in {@link #unit}. */
  public BigDecimal figure() {
    return number.value();
  }

  /** The figure in the base of the unit's kind. */
  public double base() {
    return unit.toBase(number.nearest());
  }

  /** Number and unit as written: {@code 18.00 %}. */
  public String asWritten() {
    return number.text() + " " + unitAsWritten.text();
  }
}
