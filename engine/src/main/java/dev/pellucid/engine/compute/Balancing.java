package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Passes;
import java.util.List;

/** The mass of a feed at each end: what its leaves pour in, through every pass. */
final class Balancing {
  private final Passes passes;
  private final int moisture;
  private final Surroundings surroundings;

  Balancing(Passes passes, Nutrients nutrients, Surroundings surroundings) {
    this.passes = passes;
    this.moisture = nutrients.moisture().orElseThrow(() -> unresolved(nutrients)).index();
    this.surroundings = surroundings;
  }

  Balances of(List<ExplodedLine> leaves) {
    boolean overage = false;
    for (ExplodedLine leaf : leaves) {
      overage |= leaf.richest() > leaf.kg();
    }
    Balance richest = balance(leaves, Scenario.RICHEST, overage);
    return new Balances(
        balance(leaves, Scenario.EXPECTED, false),
        balance(leaves, Scenario.POOREST, false),
        richest,
        overage ? balance(leaves, Scenario.RICHEST, false) : richest,
        overage);
  }

  /** How much finished feed their dry matter comes to. */
  FeedYield yieldOf(List<ExplodedLine> leaves, Balances balances) {
    return FeedYield.of(leaves, moisture, balances.expected());
  }

  /** The part of water that counts of an ingredient at an end. */
  double water(Composition composition, Scenario end) {
    return (end == Scenario.RICHEST ? composition.high() : composition.low()).at(moisture);
  }

  /**
   * A mass of a feed, and what one kg more of each of the four figures does to it, on which all
   * masses hang.
   */
  record Moved(double now, double perMix, double perMixWater, double perCoat, double perCoatWater) {
    private static Moved of(double now, double[] more, double[] by) {
      return new Moved(
          now,
          (more[0] - now) / by[0],
          (more[1] - now) / by[1],
          (more[2] - now) / by[2],
          (more[3] - now) / by[3]);
    }
  }

  /** How the masses of a balance move. */
  record Gradient(Moved finished, Moved dry, Moved kernel) {}

  /**
   * How they move where they stand.
   *
   * @param mix what was poured into the mixer
   * @param part by which each figure is moved to see it
   */
  Gradient gradient(
      Balance now, Scenario end, MassFlow.Poured mix, MassFlow.Poured coat, double part) {
    double kg = part * (mix.kg() + coat.kg());
    double[] by = {kg, kg, kg, kg};
    double[] finished = new double[4];
    double[] dry = new double[4];
    double[] kernel = new double[4];
    for (int i = 0; i < by.length; i++) {
      Balance moved =
          MassFlow.balance(
              passes,
              surroundings,
              end,
              new MassFlow.Poured(mix.kg() + (i == 0 ? kg : 0), mix.water() + (i == 1 ? kg : 0)),
              new MassFlow.Poured(coat.kg() + (i == 2 ? kg : 0), coat.water() + (i == 3 ? kg : 0)));
      finished[i] = moved.finished();
      dry[i] = dry(moved);
      kernel[i] = moved.kernel();
    }
    return new Gradient(
        Moved.of(now.finished(), finished, by),
        Moved.of(dry(now), dry, by),
        Moved.of(now.kernel(), kernel, by));
  }

  private static double dry(Balance balance) {
    return balance.finished() * (1 - balance.moisture());
  }

  private Balance balance(List<ExplodedLine> leaves, Scenario end, boolean withOverage) {
    double mix = 0;
    double mixWater = 0;
    double coat = 0;
    double coatWater = 0;
    for (ExplodedLine leaf : leaves) {
      double kg = withOverage ? leaf.richest() : leaf.kg();
      Composition composition = leaf.composition();
      double water = kg * water(composition, end);
      if (leaf.line().place() == Place.MIX) {
        mix += kg;
        mixWater += water;
      } else {
        coat += kg;
        coatWater += water;
      }
    }
    return MassFlow.balance(
        passes,
        surroundings,
        end,
        new MassFlow.Poured(mix, mixWater),
        new MassFlow.Poured(coat, coatWater));
  }

  private static IllegalStateException unresolved(Nutrients nutrients) {
    return new IllegalStateException(
        "a recipe was resolved before " + nutrients.mendFirst() + " was fixed");
  }
}
