package dev.pellucid.engine.weighing;

import dev.pellucid.engine.data.Scale;
import dev.pellucid.measure.Closeness;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts amounts on the scales of a plant: each goes to the coarsest scale whose division is at most
 * half of what the amount may be off, and where there is none to the finest that can carry it. It
 * is rounded to whole divisions, and to no digit finer than a tenth of what it may be off. An
 * amount that no scale carries at once is parted into equal weighings on the scale that carries
 * most.
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
    Optional<Pan> chosen = chosen(kg);
    if (chosen.isEmpty()) {
      return parted(kg);
    }
    Pan pan = chosen.get();
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
    Optional<Pan> chosen = chosen(wanted);
    if (chosen.isEmpty()) {
      return place(wanted);
    }
    Pan pan = chosen.get();
    double step = step(pan, wanted);
    double up = Closeness.up(wanted / pan.scale().division() / step) * step;
    double each = pan.divisions(up);
    return Closeness.isAtMost(each, pan.scale().most())
        ? new Placing.Placed(new Weight(pan.scale(), 1, each, tolerance(pan, each, step)))
        : place(each);
  }

  private Optional<Pan> chosen(double kg) {
    Pan best = null;
    for (Pan pan : pans) {
      Scale scale = pan.scale();
      if (Closeness.isAtMost(kg, scale.most())) {
        boolean enough =
            Closeness.isAtLeast(kg, scale.least())
                && Closeness.isAtMost(2 * scale.division(), allowed * kg);
        best = best == null || enough ? pan : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private Placing parted(double kg) {
    double needed = Closeness.up(kg / largest.scale().most());
    return needed > mostWeighings
        ? new Placing.TooMuch(largest.scale(), (long) needed)
        : new Placing.Placed(weight(largest, (int) needed, kg));
  }

  private Weight weight(Pan pan, int weighings, double kg) {
    double division = pan.scale().division();
    double step = step(pan, kg / weighings);
    double steps = Math.rint(kg / weighings / division / step);
    double each = pan.divisions(steps * step);
    if (Closeness.isAbove(each, pan.scale().most())) {
      each = pan.divisions((steps - 1) * step);
    }
    return new Weight(pan.scale(), weighings, each, tolerance(pan, each, step));
  }

  /** How far it may be off, in whole steps and at least one. */
  private double tolerance(Pan pan, double each, double step) {
    double steps = Closeness.down(allowed * each / pan.scale().division() / step);
    return pan.divisions(Math.max(1, steps) * step);
  }

  /**
   * In how many divisions a weight goes up, so that the last digit that is shown counts for at
   * least a tenth of what it may be off; one where the divisions do not go into such a digit.
   */
  private double step(Pan pan, double kg) {
    double division = pan.scale().division();
    double digit = Math.pow(10, Closeness.up(Math.log10(allowed * kg / 10)));
    for (double place = digit; place > division; place /= 10) {
      double divisions = Math.rint(place / division);
      if (Closeness.same(divisions * division, place)) {
        return divisions;
      }
    }
    return 1;
  }

  /**
   * By how much an amount goes up at least, so that a scale shows it; kg, all weighings together.
   */
  double step(double kg) {
    Optional<Pan> chosen = chosen(kg);
    Pan pan = chosen.isPresent() ? chosen.get() : largest;
    double weighings = chosen.isPresent() ? 1 : Closeness.up(kg / largest.scale().most());
    return weighings * pan.divisions(step(pan, kg / weighings));
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
