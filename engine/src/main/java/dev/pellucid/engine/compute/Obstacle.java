package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Pass;

/** Why a feed cannot be reckoned. Moistures are shares. */
public sealed interface Obstacle {
  Pass pass();

  /** Shaped wet or hot, and nothing says how moist it is afterwards. */
  record MoistureUnknown(Pass pass) implements Obstacle {}

  /** A dryer or cooler is to reach a moisture above the one before it. */
  record DriesUpwards(Pass pass, double before, double target) implements Obstacle {}

  /** Water is to be added up to a moisture below the one before. */
  record WetsDownwards(Pass pass, double before, double target) implements Obstacle {}

  /** Steam is to heat the mix to a temperature it already has, or that steam cannot reach. */
  record SteamCannotHeat(Pass pass, double from, double to) implements Obstacle {}

  /** The folder tells no saturated steam, and the pass needs it. */
  record NoSteamTable(Pass pass) implements Obstacle {}
}
