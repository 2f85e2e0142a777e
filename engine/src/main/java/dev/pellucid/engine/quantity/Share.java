package dev.pellucid.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * An exact share in percent, which is also kg per 100 kg weighed. Sums of shares are exact; {@code
 * 1.0} and {@code 1.00} are the same share.
 */
public final class Share implements Comparable<Share> {
  public static final Share ZERO = new Share(BigDecimal.ZERO);
  public static final Share WHOLE = new Share(BigDecimal.valueOf(100));

  /** Enough digits that a quotient of written figures never shows a difference. */
  private static final MathContext DIGITS = MathContext.DECIMAL128;

  private final BigDecimal percent;
  private final double asDouble;

  public Share(BigDecimal percent) {
    this.percent = percent.signum() == 0 ? BigDecimal.ZERO : percent.stripTrailingZeros();
    this.asDouble = this.percent.doubleValue();
  }

  public BigDecimal percent() {
    return percent;
  }

  public Share plus(Share other) {
    return new Share(percent.add(other.percent));
  }

  public Share minus(Share other) {
    return new Share(percent.subtract(other.percent));
  }

  /** This share of {@code part}: 10 % of 1.00 % is 0.10 %. */
  public Share of(Share part) {
    return new Share(percent.multiply(part.percent).movePointLeft(2));
  }

  /** This mass as a share of another of the same unit. */
  public static Share ratio(BigDecimal mass, BigDecimal whole) {
    return new Share(mass.movePointRight(2).divide(whole, DIGITS));
  }

  /** kg per 100 kg. */
  public double kgPer100() {
    return asDouble;
  }

  /** As a part of one. */
  public double part() {
    return asDouble / 100;
  }

  public boolean isPositive() {
    return percent.signum() > 0;
  }

  public boolean isNegative() {
    return percent.signum() < 0;
  }

  @Override
  public int compareTo(Share other) {
    return percent.compareTo(other.percent);
  }

  /** {@code 99.9 %}, without an exponent. */
  @Override
  public String toString() {
    return percent.toPlainString() + " %";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Share share && percent.equals(share.percent);
  }

  @Override
  public int hashCode() {
    return percent.hashCode();
  }
}
