package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import java.math.BigDecimal;

/** A number and its unit, as a data file writes them. */
record Figure(String number, Unit unit) {
  /** In the base of the unit's kind. */
  double base() {
    return unit.toBase(new BigDecimal(number));
  }
}
