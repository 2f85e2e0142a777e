package dev.pellucid.engine.quality;

import java.util.List;

/**
 * One figure read in several samples of a batch: how even the mix is.
 *
 * <p>The coefficient of variation is {@code s / mean} with {@code s} over {@code n - 1} (from
 * memory, sure). Ten samples of about 100 g at equal intervals are usual (WFP, page on the
 * coefficient of variation).
 *
 * @param readings in any one unit, two at least, not all of them zero
 */
public record MixerTest(List<Double> readings) {
  /** Fewer samples than this tell little. */
  public static final int USUAL_SAMPLES = 10;

  public MixerTest {
    readings = List.copyOf(readings);
    if (readings.size() < 2
        || readings.stream().anyMatch(it -> !(it >= 0 && it < Double.POSITIVE_INFINITY))
        || readings.stream().allMatch(it -> it == 0)) {
      throw new IllegalArgumentException("not the readings of a mixer test: " + readings);
    }
  }

  public double mean() {
    return readings.stream().mapToDouble(Double::doubleValue).sum() / readings.size();
  }

  /** One standard deviation, with n - 1. */
  public double deviation() {
    double mean = mean();
    double squares = readings.stream().mapToDouble(it -> (it - mean) * (it - mean)).sum();
    return Math.sqrt(squares / (readings.size() - 1));
  }

  /** The coefficient of variation, a share of the mean. */
  public double variation() {
    return deviation() / mean();
  }

  /**
   * How even the mix is.
   *
   * @param strict the coefficient that the strict ask for
   * @param common the one that is common
   */
  public Evenness evenness(double strict, double common) {
    return Evenness.of(variation(), strict, common);
  }
}
