package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Step;

/** Temperatures at which steps and stores are told: common practice, drawn wide, no source. */
final class RetentionSpans {
  private static final Common CONDITION = of("the temperature of condition", 30, 150);
  private static final Common PELLET = of("the temperature of pellet", 25, 150);
  private static final Common EXTRUDE = of("the temperature of extrude", 15, 220);
  private static final Common DRY = of("the temperature of dry", 15, 250);
  private static final Common STORE = of("the temperature of a store", 3, 60);
  private static final Common OTHER = of("the temperature of a step", 3, 250);

  private RetentionSpans() {}

  private static Common of(String what, double low, double high) {
    return new Common(what, low, high, Unit.CELSIUS);
  }

  static Common of(Step step) {
    return switch (step) {
      case CONDITION -> CONDITION;
      case PELLET -> PELLET;
      case EXTRUDE -> EXTRUDE;
      case DRY -> DRY;
      case STORE -> STORE;
      default -> OTHER;
    };
  }
}
