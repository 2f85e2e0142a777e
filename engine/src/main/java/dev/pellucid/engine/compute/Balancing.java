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

  private Balance balance(List<ExplodedLine> leaves, Scenario end, boolean withOverage) {
    double mix = 0;
    double mixWater = 0;
    double coat = 0;
    double coatWater = 0;
    for (ExplodedLine leaf : leaves) {
      double kg = withOverage ? leaf.richest() : leaf.kg();
      Composition composition = leaf.composition();
      double water =
          kg * (end == Scenario.RICHEST ? composition.high() : composition.low()).at(moisture);
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
