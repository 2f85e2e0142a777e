package dev.pellucid.engine.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Full bags and what is left over; together they are what was packed.
 *
 * @param bag kg in a full bag
 * @param full how many
 * @param remainder in the last bag; zero when there is none
 */
public record Packing(Mass bag, long full, Mass remainder) {

  /** Packs a mass. */
  static Packing of(Mass packed, BigDecimal bag) {
    BigDecimal full = packed.kg().divide(bag, 0, RoundingMode.FLOOR);
    BigDecimal left = packed.kg().subtract(full.multiply(bag));
    return new Packing(new Mass(bag), full.longValueExact(), new Mass(left));
  }

  /** Whether anything is left over. */
  public boolean hasRemainder() {
    return !remainder.isZero();
  }
}
