package dev.pellucid.engine.weighing;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.weighing.Dilution.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Plans the dilution of a line. Each step goes as far as practice allows and no further than it
 * must, in numbers of parts that are easily weighed. It starts with what all loads need together,
 * or the least that can be weighed.
 */
final class Diluter {
  private static final int MOST_STEPS = 4;

  private final Weigher weigher;
  private final double mostParts;

  /**
   * @param mostParts how many parts one part may become in a step
   */
  Diluter(Weigher weigher, double mostParts) {
    this.weigher = weigher;
    this.mostParts = mostParts;
  }

  /**
   * @param perLoad kg of the line that each load needs
   * @param spare kg of the carrier that each load can give
   */
  Optional<Dilution> plan(double perLoad, int loads, Line carrier, double spare) {
    List<Step> steps = new ArrayList<>();
    double strength = 1;
    while (steps.size() < MOST_STEPS) {
      OptionalInt parts = partsToWeigh(perLoad / strength);
      int ratio = parts.orElse(mostParts());
      Optional<Step> step = ratio < 2 ? Optional.empty() : step(perLoad / strength * loads, ratio);
      if (step.isEmpty()) {
        return Optional.empty();
      }
      steps.add(step.get());
      strength *= step.get().strong().total() / step.get().makes();
      Optional<Weight> take = weigher.place(perLoad / strength).placed();
      if (take.isPresent()) {
        return Optional.of(new Dilution(carrier, steps, take.get(), strength))
            .filter(dilution -> dilution.carried() < spare);
      }
    }
    return Optional.empty();
  }

  /** The fewest parts after which a load's need can be weighed. */
  private OptionalInt partsToWeigh(double perLoad) {
    return Weigher.easyParts(mostParts)
        .filter(parts -> weigher.place(perLoad * parts).placed().isPresent())
        .findFirst();
  }

  private int mostParts() {
    return Weigher.easyParts(mostParts).max().orElse(1);
  }

  private Optional<Step> step(double needed, int parts) {
    return weigher
        .placeUp(needed)
        .placed()
        .flatMap(
            strong ->
                weigher
                    .place(strong.total() * (parts - 1))
                    .placed()
                    .map(carrier -> new Step(strong, carrier)));
  }
}
