package dev.pellucid.engine.judge;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The standard normal distribution. The quantile is found by bisection of the distribution
 * function, which is the series of Abramowitz and Stegun, Handbook of Mathematical Functions,
 * 26.2.11: {@code P(x) = 1/2 + Z(x) (x + x^3/3 + x^5/(3·5) + ...)}.
 */
public final class Normal {
  private static final double FURTHEST = 8;

  /** Each doubles the digits that are right; the last changes nothing. */
  private static final int NEWTON = 6;

  /** Worked out once for each part that is asked for: a folder asks for two or three. */
  private static final Map<Double, Double> QUANTILES = new ConcurrentHashMap<>();

  private Normal() {}

  /** The z below which a part of all batches lies; 0.95 gives 1.644854. */
  public static double quantile(double part) {
    return QUANTILES.computeIfAbsent(part, Normal::bisected);
  }

  private static double bisected(double part) {
    double low = -FURTHEST;
    double high = FURTHEST;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      if (below(middle) < part) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** The middle of each of so many equal parts of all batches, rising. */
  static double[] middles(int parts) {
    double[] middles = new double[parts];
    double x = 0;
    for (int i = parts / 2; i < parts; i++) {
      double part = (i + 0.5) / parts;
      // Newton's steps, from the middle before.
      for (int step = 0; step < NEWTON; step++) {
        x += (part - below(x)) * Math.sqrt(2 * Math.PI) * Math.exp(x * x / 2);
      }
      middles[i] = x;
      middles[parts - 1 - i] = -x;
    }
    return middles;
  }

  public static double below(double x) {
    double term = x;
    double sum = x;
    for (int n = 3; Math.abs(term) > 1e-18 * Math.abs(sum) && n < 400; n += 2) {
      term *= x * x / n;
      sum += term;
    }
    return 0.5 + sum * Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
  }
}
