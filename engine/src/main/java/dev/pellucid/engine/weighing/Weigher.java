package dev.pellucid.engine.weighing;

import dev.pellucid.engine.data.Scale;
import dev.pellucid.measure.Closeness;
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
  private final List<Pan> pans;
  private final Pan largest;
  private final int mostWeighings;
  private final double allowed;

  /**
   * @param allowed how far a weight may be off, as a part of it
   */
  Weigher(List<Scale> scales, int mostWeighings, double allowed) {
    if (scales.isEmpty() || allowed <= 0) {
      throw new IllegalArgumentException("nothing to weigh on");
    }
    this.pans =
        scales.stream()
            .sorted(Comparator.comparingDouble(Scale::division).thenComparingDouble(Scale::most))
            .map(scale -> Pan.of(scale, allowed))
            .toList();
    this.largest =
        pans.stream().max(Comparator.comparingDouble(pan -> pan.scale().most())).orElseThrow();
    this.mostWeighings = mostWeighings;
    this.allowed = allowed;
  }

  /**
   * A scale, whose division is {@code digits / power} as the display writes it. Counts of divisions
   * are worked out from these, so that they come to what is displayed and not to what doubles add
   * up to.
   */
  private record Pan(Scale scale, double digits, double power, double leastDivisions) {
    static Pan of(Scale scale, double allowed) {
      BigDecimal division = BigDecimal.valueOf(scale.division());
      return new Pan(
          scale,
          division.unscaledValue().doubleValue(),
          BigDecimal.ONE.scaleByPowerOfTen(division.scale()).doubleValue(),
          Closeness.up(Math.max(scale.least() / scale.division(), 1 / (2 * allowed))));
    }

    double divisions(double count) {
      return digits * count / power;
    }

    /** Half a division may not be more than the error allowed. */
    double least() {
      return divisions(leastDivisions);
    }
  }

  /** Where an amount goes. */
  Placing place(double kg) {
    Optional<Pan> finest = finest(kg);
    if (finest.isEmpty()) {
      return parted(kg);
    }
    Pan pan = finest.get();
    return Closeness.isBelow(kg, pan.least())
        ? new Placing.TooLittle(pan.scale(), pan.least())
        : new Placing.Placed(weight(pan, 1, kg));
  }

  /** The least amount that can be weighed, on the scale that it is least on. */
  double least() {
    return pans.stream().mapToDouble(Pan::least).min().orElseThrow();
  }

  /** An amount rounded up to what a scale shows, and up to the least that can be weighed. */
  Placing placeUp(double kg) {
    double wanted = Math.max(kg, least());
    Optional<Pan> finest = finest(wanted);
    if (finest.isEmpty()) {
      return place(wanted);
    }
    Pan pan = finest.get();
    return place(pan.divisions(Closeness.up(wanted / pan.scale().division())));
  }

  private Optional<Pan> finest(double kg) {
    for (Pan pan : pans) {
      if (Closeness.isAtMost(kg, pan.scale().most())) {
        return Optional.of(pan);
      }
    }
    return Optional.empty();
  }

  private Placing parted(double kg) {
    double needed = Closeness.up(kg / largest.scale().most());
    return needed > mostWeighings
        ? new Placing.TooMuch(largest.scale(), (long) needed)
        : new Placing.Placed(weight(largest, (int) needed, kg));
  }

  private Weight weight(Pan pan, int weighings, double kg) {
    double division = pan.scale().division();
    double each = pan.divisions(Math.rint(kg / weighings / division));
    double off = Math.max(1, Closeness.down(allowed * each / division));
    return new Weight(pan.scale(), weighings, each, pan.divisions(off));
  }

  /** In how many weighings an amount would go on each scale; for remedies. */
  int mostWeighings() {
    return mostWeighings;
  }

  /** Numbers of parts that people can weigh without a slip, up to a most. */
  static IntStream easyParts(double most) {
    return IntStream.of(2, 4, 5, 10).filter(parts -> parts <= Closeness.down(most));
  }
}
