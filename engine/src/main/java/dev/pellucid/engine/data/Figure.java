package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import java.math.BigDecimal;

/**
 * A number and its unit.
 *
 * @param base the number in the base of the unit's kind
 */
record Figure(Unit unit, double base) {
  static Figure of(String number, Unit unit) {
    return new Figure(unit, unit.toBase(new BigDecimal(number)));
  }
}
