package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.measure.Unit;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Where the ends of a bound of practice can sensibly lie: common practice, drawn wide, from memory
 * and without a source. Each span is narrow enough that an end ten times off falls out of it.
 */
final class BoundSpans {
  private static final Map<BoundOf, BoundSpans> ALL = spans();

  private final Common from;
  private final Common to;

  private BoundSpans(Common from, Common to) {
    this.from = from;
    this.to = to;
  }

  static BoundSpans of(BoundOf bound) {
    BoundSpans spans = ALL.get(bound);
    if (spans == null) {
      throw new IllegalStateException("no spans of " + bound.word());
    }
    return spans;
  }

  /** Where the low end lies. */
  Common from() {
    return from;
  }

  /** Where the high end lies. */
  Common to() {
    return to;
  }

  private static Map<BoundOf, BoundSpans> spans() {
    Map<BoundOf, BoundSpans> all = new EnumMap<>(BoundOf.class);
    put(all, BoundOf.FINISHED_MOISTURE, 2, 15, 5, 40, Unit.PERCENT);
    put(all, BoundOf.SHELF_LIFE, 2, 120, 20, 900, Unit.DAY);
    put(all, BoundOf.PREMIX_SHELF_LIFE, 5, 250, 60, 1500, Unit.DAY);
    put(all, BoundOf.STORAGE_TEMPERATURE, 0.5, 25, 15, 60, Unit.CELSIUS);
    put(all, BoundOf.SCREEN_OF_DIE, 1, 40, 10, 100, Unit.PERCENT);
    put(all, BoundOf.BLENDING_TIME, 0.4, 20, 2, 120, Unit.MINUTE);
    put(all, BoundOf.PREMIX_BLENDING_TIME, 1, 60, 5, 250, Unit.MINUTE);
    put(all, BoundOf.CONDITIONING_TEMPERATURE, 30, 95, 60, 150, Unit.CELSIUS);
    put(all, BoundOf.CONDITIONING_TIME, 4, 250, 50, 3600, Unit.SECOND);
    put(all, BoundOf.PELLETING_TEMPERATURE, 15, 95, 60, 140, Unit.CELSIUS);
    put(all, BoundOf.EXTRUDING_TEMPERATURE, 15, 130, 60, 220, Unit.CELSIUS);
    put(all, BoundOf.EXPANDING_TEMPERATURE, 70, 160, 90, 220, Unit.CELSIUS);
    put(all, BoundOf.WATER_WITHOUT_STEAM, 2, 40, 5, 80, Unit.PERCENT);
    put(all, BoundOf.WATER_BESIDE_STEAM, 0.5, 20, 5, 60, Unit.PERCENT);
    put(all, BoundOf.LENGTH_OF_DIE, 20, 150, 100, 1000, Unit.PERCENT);
    put(all, BoundOf.SIEVE_OF_DIE, 10, 99, 50, 300, Unit.PERCENT);
    put(all, BoundOf.DRYING_TEMPERATURE, 25, 110, 40, 180, Unit.CELSIUS);
    put(all, BoundOf.DRYING_TIME, 0.15, 8, 2, 72, Unit.HOUR);
    put(all, BoundOf.DRYING_OF_BATCH, 1, 48, 6, 120, Unit.HOUR);
    put(all, BoundOf.COOLING_TEMPERATURE, 1, 35, 20, 70, Unit.CELSIUS);
    put(all, BoundOf.COATING_TEMPERATURE, 5, 60, 30, 110, Unit.CELSIUS);
    put(all, BoundOf.STARCH_FLOATING, 5, 40, 15, 70, Unit.PERCENT);
    put(all, BoundOf.STARCH_SINKING, 2, 30, 10, 60, Unit.PERCENT);
    put(all, BoundOf.FAT_BEFORE_PELLETING, 0.5, 8, 2, 20, Unit.PERCENT);
    put(all, BoundOf.FAT_BEFORE_EXTRUDING, 0.5, 10, 3, 30, Unit.PERCENT);
    put(all, BoundOf.REWORK, 0.5, 20, 2, 50, Unit.PERCENT);
    put(all, BoundOf.OIL_BY_HAND, 0.2, 5, 1, 15, Unit.PERCENT);
    put(all, BoundOf.OIL_IN_DRUM, 0.2, 8, 2, 25, Unit.PERCENT);
    put(all, BoundOf.OIL_UNDER_VACUUM, 0.5, 20, 8, 50, Unit.PERCENT);
    put(all, BoundOf.WEIGHING_MICRO, 0.05, 2, 0.15, 5, Unit.PERCENT);
    put(all, BoundOf.WEIGHING_MACRO, 0.02, 2, 0.08, 4, Unit.PERCENT);
    put(all, BoundOf.DILUTION_STEP, 2, 40, 20, 80, Unit.PERCENT);
    put(all, BoundOf.MIXING_VARIATION, 0.5, 10, 3, 25, Unit.PERCENT);
    put(all, BoundOf.MIXING_VARIATION_STRICT, 0.5, 5, 1, 15, Unit.PERCENT);
    put(all, BoundOf.GRIND_OF_DIE, 1, 20, 5, 60, Unit.PERCENT);
    put(all, BoundOf.DURABILITY, 60, 99.5, 90, 100, Unit.PERCENT);
    put(all, BoundOf.YIELD_OF_PLAN, 70, 100, 99, 130, Unit.PERCENT);
    return Collections.unmodifiableMap(all);
  }

  private static void put(
      Map<BoundOf, BoundSpans> all,
      BoundOf bound,
      double low,
      double lowTo,
      double high,
      double highTo,
      Unit unit) {
    String word = bound.word();
    all.put(
        bound,
        new BoundSpans(
            new Common("the low end of " + word, low, lowTo, unit),
            new Common("the high end of " + word, high, highTo, unit)));
  }
}
