package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line.Place;
import java.util.HashMap;
import java.util.Map;

/**
 * How the masses of a feed move with its lines. They hang on four figures alone, mix and coat with
 * the water in each; how, the process says, when each is moved a little.
 */
final class MassSlopes {
  /** The part of the mix by which its mass and its water are moved to see what the process does. */
  private static final double PROBE = 1e-4;

  private final ComputedFeed feed;
  private final RowsByLine rows;
  private final Balancing balancing;

  /** By balance, once one is asked for. */
  private final Map<Mass, Masses> masses = new HashMap<>();

  MassSlopes(ComputedFeed feed, RowsByLine rows) {
    this.feed = feed;
    this.rows = rows;
    this.balancing = new Balancing(feed.recipe().process(), feed.nutrients(), feed.surroundings());
  }

  /** Whether a balance is that with all handling overage lost. */
  record Mass(Scenario end, boolean lost) {
    static Mass of(Scenario end) {
      return new Mass(end, false);
    }

    /** At which end the masses of lines are read. */
    Scenario ofLines() {
      return end == Scenario.RICHEST && !lost ? Scenario.RICHEST : Scenario.EXPECTED;
    }
  }

  /** The masses of a balance as sums over lines. */
  record Masses(Slopes.Slope finished, Slopes.Slope dry, Slopes.Slope kernel) {}

  /** How those of one balance move. */
  Masses of(Mass which) {
    Masses known = masses.get(which);
    if (known == null) {
      known = worked(which);
      masses.put(which, known);
    }
    return known;
  }

  private Masses worked(Mass which) {
    Balancing.Gradient moved =
        balancing.gradient(
            which.lost() ? feed.balances().richestLost() : feed.balances().at(which.end()),
            which.end(),
            poured(which, Place.MIX),
            poured(which, Place.COAT),
            PROBE);
    return new Masses(
        lay(which, moved.finished()), lay(which, moved.dry()), lay(which, moved.kernel()));
  }

  private MassFlow.Poured poured(Mass which, Place place) {
    double kg = 0;
    double water = 0;
    for (Row row : rows.rows()) {
      if (row.line().place() == place) {
        kg += row.kg(which.ofLines());
        water += row.kg(which.ofLines()) * balancing.water(row.composition(), which.end());
      }
    }
    return new MassFlow.Poured(kg, water);
  }

  private Slopes.Slope lay(Mass which, Balancing.Moved moved) {
    double[] per = new double[rows.rows().length];
    double[] each = which.ofLines() == Scenario.RICHEST ? rows.most() : rows.share();
    for (int i = 0; i < rows.rows().length; i++) {
      boolean mix = rows.rows()[i].line().place() == Place.MIX;
      double water = balancing.water(rows.rows()[i].composition(), which.end());
      per[i] =
          each[i]
              * (mix
                  ? moved.perMix() + water * moved.perMixWater()
                  : moved.perCoat() + water * moved.perCoatWater());
    }
    return new Slopes.Slope(moved.now(), rows.byLine(per));
  }
}
