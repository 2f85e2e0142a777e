package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.SteamTable;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The mass of one feed at one end, pass by pass.
 *
 * <p>Dry matter comes in with the mix and with the coat and never goes; water comes in with them,
 * with {@code add-water} and with steam, and goes off in a dryer or cooler until the moisture aimed
 * at. The coat goes on at its own pass: a cooler after it takes its water from the coated feed.
 * Steam condensed to heat a mass {@code M} at moisture {@code w} from T0 to T1 is {@code M c (T1 -
 * T0) / (h_g(100 °C) - h_f(T1))} with {@code c = 1.55 (1 - w) + 4.187 w} kJ/(kg K): an energy
 * balance, the heat capacity of dry feed from memory. A cooler can evaporate what the heat of the
 * pellet pays for: {@code M c ΔT / (h_g - h_f)}; a coat that goes on cold takes its part of that
 * heat, with the heat capacity of oil from memory.
 */
final class MassFlow {
  private static final double DRY_HEAT = 1.55;
  private static final double WATER_HEAT = 4.187;
  private static final double OIL_HEAT = 2.0;
  private static final double STEAM_TEMPERATURE = 100;

  /** To what a cooler brings the feed where nothing is told, in °C. */
  private static final double COOLED = 30;

  private final Optional<SteamTable> steamTable;
  private final Scenario end;
  private final double airTemperature;
  private final Poured mix;
  private final Poured coat;
  private final List<Stage> stages = new ArrayList<>();
  private double dry;
  private double water;
  private double temperature;
  private double waterAdded;
  private double steam;
  private double atDie;
  private Optional<Kernel> kernel = Optional.empty();
  private Optional<Balance.MoistureSet> set = Optional.empty();
  private Optional<Pass> untold = Optional.empty();
  private Optional<Obstacle> obstacle = Optional.empty();

  /** What goes in at once, in kg per 100 kg of recipe, and the water in it. */
  record Poured(double kg, double water) {}

  /** What is there when the coat goes on. */
  private record Kernel(double kg, double moisture) {}

  private MassFlow(Surroundings surroundings, Scenario end, Poured mix, Poured coat) {
    this.steamTable = surroundings.steam();
    this.end = end;
    this.mix = mix;
    this.coat = coat;
    this.dry = mix.kg() - mix.water();
    this.water = mix.water();
    this.airTemperature = surroundings.airTemperature();
    this.temperature = airTemperature;
    this.atDie = moisture();
  }

  static Balance balance(
      Passes passes, Surroundings surroundings, Scenario end, Poured mix, Poured coat) {
    MassFlow flow = new MassFlow(surroundings, end, mix, coat);
    for (Pass pass : passes.inOrder()) {
      if (flow.obstacle.isEmpty()) {
        flow.take(pass);
      }
    }
    return flow.finish();
  }

  private Balance finish() {
    Optional<Obstacle> stop = obstacle;
    if (stop.isEmpty() && untold.isPresent()) {
      stop = Optional.of(new Obstacle.MoistureUnknown(untold.get()));
    }
    Kernel before = kernel.isPresent() ? kernel.get() : new Kernel(dry + water, moisture());
    return new Balance(
        stages,
        mix.kg(),
        mix.kg() - mix.water(),
        waterAdded,
        steam,
        atDie,
        before.kg(),
        before.moisture(),
        coat.kg(),
        dry + water,
        moisture(),
        set,
        stop);
  }

  private double moisture() {
    return dry + water > 0 ? water / (dry + water) : 0;
  }

  private void take(Pass pass) {
    switch (pass.step()) {
      case ADD_WATER -> addWater(pass);
      case CONDITION -> condition(pass);
      case PELLET, EXTRUDE -> shape(pass);
      case DRY, COOL -> dry(pass);
      case COAT -> coat(pass);
      case GRIND, BLEND, ADD_LIQUID, SIEVE, PACK, STORE -> record(pass, 0, 0, moisture());
    }
  }

  private void addWater(Pass pass) {
    double before = moisture();
    double added = 0;
    Optional<Setting> onMix = pass.setting(Property.ON_MIX);
    Optional<Setting> toMoisture = pass.setting(Property.TO_MOISTURE);
    if (onMix.isPresent()) {
      added = at(onMix.get()) * (dry + water);
    } else if (toMoisture.isPresent()) {
      double target = at(toMoisture.get());
      added = dry / (1 - target) - dry - water;
      if (added < 0 && end == Scenario.EXPECTED) {
        obstacle = Optional.of(new Obstacle.WetsDownwards(pass, before, target));
        return;
      }
      added = Math.max(0, added);
      set = Optional.of(new Balance.MoistureSet(pass, toMoisture.get(), kernel.isPresent()));
    }
    waterAdded += added;
    water += added;
    atDie = moisture();
    record(pass, added, 0, before);
  }

  private void condition(Pass pass) {
    double before = moisture();
    Optional<Setting> target = pass.setting(Property.TEMPERATURE);
    if (target.isEmpty()) {
      record(pass, 0, 0, before);
      return;
    }
    double from = aim(pass, Property.START, temperature);
    double to = target.get().aim();
    if (to <= from || to > STEAM_TEMPERATURE) {
      obstacle = Optional.of(new Obstacle.SteamCannotHeat(pass, from, to));
    } else if (steamTable.isEmpty()) {
      obstacle = Optional.of(new Obstacle.NoSteamTable(pass));
    } else {
      double heat = (dry + water) * heatCapacity() * (to - from);
      SteamTable table = steamTable.get();
      double taken = heat / (table.vapour(STEAM_TEMPERATURE) - table.liquid(to));
      steam += taken;
      water += taken;
      temperature = to;
      atDie = moisture();
      untold = Optional.of(pass);
      record(pass, taken, 0, before);
    }
  }

  private static double aim(Pass pass, Property property, double otherwise) {
    Optional<Setting> told = pass.setting(property);
    return told.isPresent() ? told.get().aim() : otherwise;
  }

  private double heatCapacity() {
    double w = moisture();
    return (1 - w) * DRY_HEAT + w * WATER_HEAT;
  }

  /** A second pass through the coater finds all of the coat on the kernel. */
  private void coat(Pass pass) {
    double before = moisture();
    if (kernel.isPresent()) {
      record(pass, 0, 0, before);
      return;
    }
    kernel = Optional.of(new Kernel(dry + water, before));
    double warm = (dry + water) * heatCapacity();
    double cold = coat.kg() * OIL_HEAT;
    double of = aim(pass, Property.TEMPERATURE, airTemperature);
    if (warm + cold > 0) {
      temperature = (warm * temperature + cold * of) / (warm + cold);
    }
    dry += coat.kg() - coat.water();
    water += coat.water();
    record(pass, coat.kg(), 0, before);
  }

  private void shape(Pass pass) {
    temperature = aim(pass, Property.TEMPERATURE, temperature);
    untold = Optional.of(pass);
    record(pass, 0, 0, moisture());
  }

  private void dry(Pass pass) {
    double before = moisture();
    OptionalDouble evaporable = evaporable(pass);
    Optional<Setting> target = pass.setting(Property.MOISTURE);
    temperature = aim(pass, Property.TEMPERATURE, temperature);
    if (target.isEmpty()) {
      untold = pass.step() == Step.DRY ? Optional.of(pass) : untold;
      stages.add(stage(pass, 0, 0, before, evaporable));
      return;
    }
    double aim = target.get().aim();
    // At another end than the one aimed at, the feed may come dry enough already.
    if (aim > before * (1 + 1e-12) && end == Scenario.EXPECTED) {
      obstacle = Optional.of(new Obstacle.DriesUpwards(pass, before, aim));
      return;
    }
    double to = Math.min(at(target.get()), before);
    double left = dry / (1 - to) - dry;
    double off = water - left;
    water = left;
    untold = Optional.empty();
    set = Optional.of(new Balance.MoistureSet(pass, target.get(), kernel.isPresent()));
    stages.add(stage(pass, 0, off, before, evaporable));
  }

  /**
   * Minima are judged at the wet end of what is accepted, maxima at the dry end; neither end spares
   * what is aimed at.
   */
  private double at(Setting moisture) {
    return switch (end) {
      case EXPECTED -> moisture.aim();
      case POOREST -> Math.max(moisture.aim(), moisture.band().high());
      case RICHEST -> Math.min(moisture.aim(), moisture.band().low());
    };
  }

  private OptionalDouble evaporable(Pass pass) {
    if (pass.step() != Step.COOL || steamTable.isEmpty()) {
      return OptionalDouble.empty();
    }
    double to = aim(pass, Property.TEMPERATURE, COOLED);
    double mean = (temperature + to) / 2;
    double latent = steamTable.get().vapour(mean) - steamTable.get().liquid(mean);
    double heat = (dry + water) * heatCapacity() * Math.max(0, temperature - to);
    return OptionalDouble.of(heat / latent);
  }

  private void record(Pass pass, double added, double evaporated, double moistureBefore) {
    stages.add(stage(pass, added, evaporated, moistureBefore, OptionalDouble.empty()));
  }

  private Stage stage(
      Pass pass, double added, double evaporated, double moistureBefore, OptionalDouble most) {
    double after = dry + water;
    return new Stage(
        pass,
        after - added + evaporated,
        added,
        evaporated,
        after,
        moistureBefore,
        moisture(),
        most);
  }
}
