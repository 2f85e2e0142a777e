package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Pass;
import java.util.function.Function;

/** Why a feed cannot be reckoned. Moistures are shares. */
public sealed interface Obstacle {
  Pass pass();

  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<MoistureUnknown, R> moistureUnknown,
      Function<DriesUpwards, R> driesUpwards,
      Function<WetsDownwards, R> wetsDownwards,
      Function<SteamCannotHeat, R> steamCannotHeat,
      Function<NoSteamTable, R> noSteamTable);

  /** Whether it is steam that cannot heat the mix. */
  default boolean isCold() {
    return byKind(untold -> false, dries -> false, wets -> false, steam -> true, none -> false);
  }

  /** Shaped wet or hot, and nothing says how moist it is afterwards. */
  record MoistureUnknown(Pass pass) implements Obstacle {
    @Override
    public <R> R byKind(
        Function<MoistureUnknown, R> moistureUnknown,
        Function<DriesUpwards, R> driesUpwards,
        Function<WetsDownwards, R> wetsDownwards,
        Function<SteamCannotHeat, R> steamCannotHeat,
        Function<NoSteamTable, R> noSteamTable) {
      return moistureUnknown.apply(this);
    }
  }

  /** A dryer or cooler is to reach a moisture above the one before it. */
  record DriesUpwards(Pass pass, double before, double target) implements Obstacle {
    @Override
    public <R> R byKind(
        Function<MoistureUnknown, R> moistureUnknown,
        Function<DriesUpwards, R> driesUpwards,
        Function<WetsDownwards, R> wetsDownwards,
        Function<SteamCannotHeat, R> steamCannotHeat,
        Function<NoSteamTable, R> noSteamTable) {
      return driesUpwards.apply(this);
    }
  }

  /** Water is to be added up to a moisture below the one before. */
  record WetsDownwards(Pass pass, double before, double target) implements Obstacle {
    @Override
    public <R> R byKind(
        Function<MoistureUnknown, R> moistureUnknown,
        Function<DriesUpwards, R> driesUpwards,
        Function<WetsDownwards, R> wetsDownwards,
        Function<SteamCannotHeat, R> steamCannotHeat,
        Function<NoSteamTable, R> noSteamTable) {
      return wetsDownwards.apply(this);
    }
  }

  /** Steam is to heat the mix to a temperature it already has, or that steam cannot reach. */
  record SteamCannotHeat(Pass pass, double from, double to) implements Obstacle {
    @Override
    public <R> R byKind(
        Function<MoistureUnknown, R> moistureUnknown,
        Function<DriesUpwards, R> driesUpwards,
        Function<WetsDownwards, R> wetsDownwards,
        Function<SteamCannotHeat, R> steamCannotHeat,
        Function<NoSteamTable, R> noSteamTable) {
      return steamCannotHeat.apply(this);
    }
  }

  /** The folder tells no saturated steam, and the pass needs it. */
  record NoSteamTable(Pass pass) implements Obstacle {
    @Override
    public <R> R byKind(
        Function<MoistureUnknown, R> moistureUnknown,
        Function<DriesUpwards, R> driesUpwards,
        Function<WetsDownwards, R> wetsDownwards,
        Function<SteamCannotHeat, R> steamCannotHeat,
        Function<NoSteamTable, R> noSteamTable) {
      return noSteamTable.apply(this);
    }
  }
}
