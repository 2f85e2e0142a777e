package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.Dryer;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.InDryer.Hours;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Property;
import java.util.Optional;
import java.util.OptionalDouble;

/** Brings a batch into the dryer of a plant. */
public final class IntoDryer {
  private final Dryer dryer;
  private final double wet;
  private final double water;
  private final Optional<Hours> time;

  private IntoDryer(Dryer dryer, double wet, double water, Optional<Hours> time) {
    this.dryer = dryer;
    this.wet = wet;
    this.water = water;
    this.time = time;
  }

  /**
   * The dryer that a step is done in; empty where the plant has none for its temperature.
   *
   * @param pass the step that dries
   */
  public static Optional<Dryer> chosen(Plant plant, Pass pass) {
    Optional<Setting> told = pass.setting(Property.TEMPERATURE);
    return plant.dryer(
        told.isPresent() ? OptionalDouble.of(told.get().aim()) : OptionalDouble.empty());
  }

  /**
   * A batch in it.
   *
   * @param stage what drying does to 100 kg
   * @param times batches of 100 kg that this one is
   */
  static InDryer of(Dryer dryer, Stage stage, double times) {
    Optional<Setting> told = stage.pass().setting(Property.TIME);
    Optional<Hours> time =
        told.isPresent()
            ? Optional.of(new Hours(told.get().low(), told.get().high()))
            : Optional.empty();
    IntoDryer batch =
        new IntoDryer(dryer, stage.before() * times, stage.evaporated() * times, time);
    return dryer.way().byKind(batch::onTrays, batch::inBed, batch::onBelt);
  }

  private InDryer onTrays(Dryer.Trays trays) {
    int count = rounds(wet, trays.load());
    int rounds = rounds(count, trays.atOnce().orElse(count));
    return new InDryer(
        dryer,
        water,
        rounds,
        wet / rounds,
        Optional.of(new Trays(trays.load(), count, rounds)),
        OptionalDouble.empty(),
        time);
  }

  private InDryer inBed(Dryer.Bed bed) {
    int rounds = bed.holds().isPresent() ? rounds(wet, bed.holds().getAsDouble()) : 1;
    double least = water / rounds / bed.waterPerHour();
    return blown(rounds, least, time.orElse(new Hours(least, least)).atLeast(least));
  }

  /** As long as a belt full takes, so long takes the next. */
  private InDryer onBelt(Dryer.Belt belt) {
    double least = water / belt.waterPerHour();
    double full = belt.holds().isPresent() ? Math.max(1, wet / belt.holds().getAsDouble()) : 1;
    Hours told = time.orElse(new Hours(0, 0));
    return blown(1, least, new Hours(told.low() * full, told.high() * full).atLeast(least));
  }

  private InDryer blown(int rounds, double least, Hours each) {
    return new InDryer(
        dryer,
        water,
        rounds,
        wet / rounds,
        Optional.empty(),
        OptionalDouble.of(least),
        Optional.of(each));
  }

  /** How often so many kg must be taken to be through with all. */
  static int rounds(double kg, double most) {
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, Closeness.up(kg / most)));
  }
}
