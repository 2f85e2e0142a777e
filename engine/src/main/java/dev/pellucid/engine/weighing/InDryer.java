package dev.pellucid.engine.weighing;

import dev.pellucid.engine.data.Dryer;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A batch in the dryer.
 *
 * @param water to be taken off, in kg
 * @param rounds how often the dryer is filled; once where it runs on
 * @param kgOfRound wet feed in each round, in kg; the last may hold less
 * @param trays where it is dried on trays
 * @param hoursByWater how long a round takes at the least for its water; empty for trays
 * @param each how long a round takes; empty where nothing tells it
 */
public record InDryer(
    Dryer dryer,
    double water,
    int rounds,
    double kgOfRound,
    Optional<Trays> trays,
    OptionalDouble hoursByWater,
    Optional<Hours> each) {

  /** From and to. */
  public record Hours(double low, double high) {
    Hours times(int rounds) {
      return new Hours(low * rounds, high * rounds);
    }

    /** Each end at the least so long. */
    Hours atLeast(double hours) {
      return new Hours(Math.max(low, hours), Math.max(high, hours));
    }
  }

  /** How long the batch takes, one round after the other. */
  public Optional<Hours> all() {
    return each.isPresent() ? Optional.of(each.get().times(rounds)) : Optional.empty();
  }
}
