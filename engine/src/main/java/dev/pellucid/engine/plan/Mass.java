package dev.pellucid.engine.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.Stream;

/**
 * A mass as a sheet shows it: kg with a fixed number of decimals, so that what is shown can be
 * added up and closes. Rounding happens here, once; sums of weights are exact.
 */
public record Mass(BigDecimal kg) {
  private static final MathContext READABLE = new MathContext(15, RoundingMode.HALF_EVEN);
  private static final int GRAMS = 3;

  /** Rounds half up the decimal figure that is nearest to the mass within 15 digits. */
  static Mass of(double kg, int decimals) {
    return new Mass(new BigDecimal(kg).round(READABLE).setScale(decimals, RoundingMode.HALF_UP));
  }

  static Mass none(int decimals) {
    return new Mass(BigDecimal.ZERO.setScale(decimals));
  }

  static Mass sum(Stream<Mass> weights, int decimals) {
    return weights.reduce(none(decimals), Mass::plus);
  }

  /** One unit of the last decimal. */
  static Mass step(int decimals) {
    return new Mass(BigDecimal.ONE.movePointLeft(decimals).setScale(decimals));
  }

  public Mass plus(Mass other) {
    return new Mass(kg.add(other.kg));
  }

  public Mass minus(Mass other) {
    return new Mass(kg.subtract(other.kg));
  }

  /** As it reads on a coarser scale. */
  Mass at(int decimals) {
    return new Mass(kg.setScale(decimals, RoundingMode.HALF_UP));
  }

  /** Without zeros after its last digit. */
  public Mass stripped() {
    BigDecimal stripped = kg.stripTrailingZeros();
    return new Mass(stripped.scale() < 0 ? stripped.setScale(0) : stripped);
  }

  public boolean isZero() {
    return kg.signum() == 0;
  }

  public boolean isNegative() {
    return kg.signum() < 0;
  }

  public double asDouble() {
    return kg.doubleValue();
  }

  /** {@code 9.000}. */
  public String inKg() {
    return kg.toPlainString();
  }

  /** {@code 302.00}. */
  public String inGrams() {
    return kg.scaleByPowerOfTen(GRAMS).setScale(Math.max(0, kg.scale() - GRAMS)).toPlainString();
  }
}
