package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.SteamTable;
import java.util.Optional;

/**
 * What the process takes from the place where the feed is made.
 *
 * @param steam the table of saturated steam, where the folder has one
 * @param airTemperature in °C, of the air that mix and coat come from
 */
public record Surroundings(Optional<SteamTable> steam, double airTemperature) {
  private static final double AIR_UNTOLD = 25;

  /** Of a plant; of a middling one where none is told. */
  static Surroundings of(Optional<SteamTable> steam, Optional<Plant> plant) {
    return new Surroundings(steam, plant.isPresent() ? plant.get().airTemperature() : AIR_UNTOLD);
  }
}
