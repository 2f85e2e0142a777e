package dev.pellucid.engine.trend;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How far figures vary from one batch to the next, by themselves: the mean of their moving ranges
 * over 1.128, the mean range of two of a normal distribution. Limits at three of it lie 2.66 mean
 * ranges from the centre, as on a chart for individuals (ISO 7870-2; NIST/SEMATECH e-Handbook of
 * Statistical Methods, section 6.3.2.2; both from memory). From one batch to the next a slow drift
 * moves little, so that it does not hide itself.
 */
public final class OwnSpread {
  /** Of fewer it says too little; as many as the example of the handbook has. */
  public static final int FEWEST = 10;

  /** The mean range of two figures of a normal distribution, in its standard deviations. */
  private static final double RANGE_OF_TWO = 1.128;

  private OwnSpread() {}

  /** Empty of too few figures, and of such as never differ. */
  static OptionalDouble of(List<Double> inOrder) {
    if (inOrder.size() < FEWEST) {
      return OptionalDouble.empty();
    }
    double spread = ofAll(inOrder);
    double largest = inOrder.stream().mapToDouble(Math::abs).max().orElse(0);
    return spread > 1e-9 * largest ? OptionalDouble.of(spread) : OptionalDouble.empty();
  }

  /** Of two figures or more. */
  public static double ofAll(List<Double> inOrder) {
    double ranges = 0;
    for (int i = 1; i < inOrder.size(); i++) {
      ranges += Math.abs(inOrder.get(i) - inOrder.get(i - 1));
    }
    return ranges / (inOrder.size() - 1) / RANGE_OF_TWO;
  }
}
