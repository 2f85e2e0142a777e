package dev.pellucid.engine.linear;

/** What holds of any pair of a low and a high bound. */
final class Bounds {
  private Bounds() {}

  /** Refuses what is no bound; a low above a high is a pair that nothing meets. */
  static void check(double low, double high) {
    if (Double.isNaN(low) || Double.isNaN(high)) {
      throw new IllegalArgumentException("a bound that is no number: " + low + " to " + high);
    }
    if (low == Double.POSITIVE_INFINITY || high == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("a bound that no amount reaches: " + low + " to " + high);
    }
  }
}
