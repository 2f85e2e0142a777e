package dev.pellucid.engine.linear;

import java.util.Arrays;

/** {@code low <= coefficients * x <= high}; either bound may be infinite. */
public final class Constraint {
  private final double[] coefficients;
  private final double low;
  private final double high;

  private Constraint(double[] coefficients, double low, double high) {
    Bounds.check(low, high);
    this.coefficients = coefficients;
    this.low = low;
    this.high = high;
  }

  /** One coefficient for each variable of a program, in their order. */
  public static Constraint of(double[] coefficients, double low, double high) {
    for (double coefficient : coefficients) {
      if (!Double.isFinite(coefficient)) {
        throw new IllegalArgumentException("a coefficient of " + coefficient);
      }
    }
    return new Constraint(coefficients.clone(), low, high);
  }

  public double low() {
    return low;
  }

  public double high() {
    return high;
  }

  /** How many variables it speaks of. */
  public int size() {
    return coefficients.length;
  }

  public double coefficient(int variable) {
    return coefficients[variable];
  }

  public double[] coefficients() {
    return coefficients.clone();
  }

  /** The same sum between other bounds. */
  public Constraint between(double newLow, double newHigh) {
    return new Constraint(coefficients, newLow, newHigh);
  }

  /** What the sum is at these values. */
  public double at(double[] x) {
    double sum = 0;
    for (int j = 0; j < coefficients.length; j++) {
      sum += coefficients[j] * x[j];
    }
    return sum;
  }

  /** The coefficients themselves, which nobody may change. */
  double[] row() {
    return coefficients;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Constraint that
        && low == that.low
        && high == that.high
        && Arrays.equals(coefficients, that.coefficients);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(coefficients) + Double.hashCode(low) + 7 * Double.hashCode(high);
  }

  @Override
  public String toString() {
    return low + " <= " + Arrays.toString(coefficients) + " <= " + high;
  }
}
