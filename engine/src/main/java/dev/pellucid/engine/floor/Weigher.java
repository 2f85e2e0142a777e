package dev.pellucid.engine.floor;

import dev.pellucid.engine.larder.Scale;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts amounts on the scales of a plant: each goes to the finest scale that can carry it, and is
 * rounded to its division. An amount that no scale carries at once is parted into equal weighings
 * on the scale that carries most.
 *
 * <p>A scale is not used below its least weight, nor where half a division would be more than the
 * error that is allowed.
 */
final class Weigher {
  private static final double CLOSE = 1e-9;

  private final List<Scale> scales;
  private final int mostWeighings;
  private final double allowed;

  /**
   * @param allowed how far a weight may be off, as a part of it
   */
  Weigher(List<Scale> scales, int mostWeighings, double allowed) {
    if (scales.isEmpty() || allowed <= 0) {
      throw new IllegalArgumentException("nothing to weigh on");
    }
    this.scales =
        scales.stream()
            .sorted(Comparator.comparingDouble(Scale::division).thenComparingDouble(Scale::most))
            .toList();
    this.mostWeighings = mostWeighings;
    this.allowed = allowed;
  }

  /** Where an amount goes. */
  Placing place(double kg) {
    Optional<Scale> finest = finest(kg);
    if (finest.isEmpty()) {
      return parted(kg);
    }
    double least = least(finest.get());
    return kg < least * (1 - CLOSE)
        ? new Placing.TooLittle(finest.get(), least)
        : new Placing.Placed(weight(finest.get(), 1, kg));
  }

  /** The least amount that can be weighed, on the scale that it is least on. */
  double least() {
    return scales.stream().mapToDouble(this::least).min().orElseThrow();
  }

  /** An amount rounded up to what a scale shows, and up to the least that can be weighed. */
  Placing placeUp(double kg) {
    double wanted = Math.max(kg, least());
    double division = finest(wanted).map(Scale::division).orElse(0.0);
    return place(division == 0 ? wanted : times(division, Math.ceil(wanted / division - CLOSE)));
  }

  private Optional<Scale> finest(double kg) {
    return scales.stream().filter(scale -> kg <= scale.most() * (1 + CLOSE)).findFirst();
  }

  /** Half a division may not be more than the error allowed. */
  private double least(Scale scale) {
    double divisions =
        Math.ceil(Math.max(scale.least() / scale.division(), 1 / (2 * allowed)) - CLOSE);
    return times(scale.division(), divisions);
  }

  private Placing parted(double kg) {
    Scale largest = scales.stream().max(Comparator.comparingDouble(Scale::most)).orElseThrow();
    double needed = Math.ceil(kg / largest.most() - CLOSE);
    return needed > mostWeighings
        ? new Placing.TooMuch(largest, (long) needed)
        : new Placing.Placed(weight(largest, (int) needed, kg));
  }

  private Weight weight(Scale scale, int weighings, double kg) {
    double each = times(scale.division(), Math.rint(kg / weighings / scale.division()));
    double divisions = Math.max(1, Math.floor(allowed * each / scale.division() + CLOSE));
    return new Weight(scale, weighings, each, times(scale.division(), divisions));
  }

  /** So many divisions, as the display writes them and not as doubles add up. */
  private static double times(double division, double count) {
    return BigDecimal.valueOf(division).multiply(BigDecimal.valueOf(count)).doubleValue();
  }

  /** In how many weighings an amount would go on each scale; for remedies. */
  int mostWeighings() {
    return mostWeighings;
  }

  /** Numbers of parts that people can weigh without a slip, up to a most. */
  static IntStream easyParts(double most) {
    return IntStream.of(2, 4, 5, 10).filter(parts -> parts <= most + CLOSE);
  }
}
