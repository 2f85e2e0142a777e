package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * {@code practice/}: what the trade does, as data that a user may change.
 *
 * @param bounds by what they bound
 * @param retention by stability class
 * @param spreads default coefficient of variation between lots by the name of the nutrient
 * @param densities bulk densities where an ingredient tells none
 * @param steam saturated steam, by rising temperature; empty where the folder tells none
 * @param cautions by step word or trait word, sentences for the batch sheet
 * @param sequence what may follow what on one line
 * @param inspection what to look at before anything is weighed
 */
public record Practice(
    Map<BoundOf, PracticeBound> bounds,
    Map<String, Retention> retention,
    Map<String, DefaultSpread> spreads,
    Densities densities,
    Optional<SteamTable> steam,
    Map<String, List<String>> cautions,
    List<SequenceRow> sequence,
    List<String> inspection) {
  public Practice {
    bounds = Map.copyOf(bounds);
    retention = Map.copyOf(retention);
    spreads = Map.copyOf(spreads);
    cautions = Map.copyOf(cautions);
    sequence = List.copyOf(sequence);
    inspection = List.copyOf(inspection);
  }

  /** The same with what may follow what on one line. */
  Practice following(List<SequenceRow> rows) {
    return new Practice(bounds, retention, spreads, densities, steam, cautions, rows, inspection);
  }

  /** What practice bounds; in files in lower case with hyphens. */
  public enum BoundOf {
    FINISHED_MOISTURE(Unit.PERCENT, "moisture of the finished feed"),
    CONDITIONING_TEMPERATURE(Unit.CELSIUS, "temperature of the mash in the conditioner"),
    CONDITIONING_TIME(Unit.SECOND, "time in the steam of the conditioner"),
    PELLETING_TEMPERATURE(Unit.CELSIUS, "temperature in the pellet press"),
    EXTRUDING_TEMPERATURE(Unit.CELSIUS, "temperature in the barrel, cold extruders included"),
    EXPANDING_TEMPERATURE(
        Unit.CELSIUS, "temperature in the barrel from which on a feed expands and floats"),
    COOLING_TEMPERATURE(Unit.CELSIUS, "temperature of the pellets after the cooler"),
    COATING_TEMPERATURE(Unit.CELSIUS, "temperature of the oil that is put on"),
    STORAGE_TEMPERATURE(Unit.CELSIUS, "temperature of the store"),
    WATER_WITHOUT_STEAM(
        Unit.PERCENT, "water added to a mix that no steam heats, as a share of the mix"),
    WATER_BESIDE_STEAM(
        Unit.PERCENT, "water added beside steam to a mix that is extruded, as a share of the mix"),
    DRYING_TEMPERATURE(Unit.CELSIUS, "temperature of the dryer"),
    DRYING_TIME(Unit.HOUR, "time in the dryer"),
    DRYING_OF_BATCH(Unit.DAY, "time until the last tray of a batch is dry"),
    BLENDING_TIME(Unit.MINUTE, "time of blending, where no mixer tells its own"),
    PREMIX_BLENDING_TIME(Unit.MINUTE, "time that a premix is blended"),
    SCREEN_OF_DIE(Unit.PERCENT, "hole of the screen as a share of the hole of the die"),
    LENGTH_OF_DIE(Unit.PERCENT, "length of the cut as a share of the hole of the die"),
    SIEVE_OF_DIE(Unit.PERCENT, "hole of the sieve as a share of the hole of the die"),
    STARCH_FLOATING(Unit.PERCENT, "starch in the mix of a floating extruded feed"),
    STARCH_SINKING(Unit.PERCENT, "starch in the mix of a sinking extruded feed"),
    FAT_BEFORE_PELLETING(Unit.PERCENT, "fat in the mix before the die of a pellet press"),
    FAT_BEFORE_EXTRUDING(Unit.PERCENT, "fat in the mix before the die of an extruder"),
    REWORK(Unit.PERCENT, "finished feed that is worked in again, as a share of the mix"),
    OIL_BY_HAND(Unit.PERCENT, "oil put on by hand, as a share of the kernel"),
    OIL_IN_DRUM(Unit.PERCENT, "oil put on in a drum, as a share of the kernel"),
    OIL_UNDER_VACUUM(Unit.PERCENT, "oil put on under vacuum, as a share of the kernel"),
    MIXING_VARIATION(Unit.PERCENT, "variation between samples of a mix"),
    MIXING_VARIATION_STRICT(Unit.PERCENT, "the same of premixes, which bring it into every feed"),
    GRIND_OF_DIE(Unit.PERCENT, "mean diameter of the ground mix as a share of the hole of the die"),
    DURABILITY(Unit.PERCENT, "pellets that are left after tumbling"),
    YIELD_OF_PLAN(Unit.PERCENT, "what was bagged as a share of what was planned"),
    WEIGHING_MICRO(
        Unit.PERCENT,
        "how far a weight may be off where a line is weighed apart, as a share of it"),
    WEIGHING_MACRO(
        Unit.PERCENT, "how far a weight may be off on the large scale, as a share of it"),
    DILUTION_STEP(Unit.PERCENT, "what is diluted, as a share of what a step of dilution makes"),
    SHELF_LIFE(Unit.DAY, "how long a feed keeps"),
    PREMIX_SHELF_LIFE(Unit.DAY, "how long a premix keeps");

    private final Unit unit;
    private final String meaning;

    BoundOf(Unit unit, String meaning) {
      this.unit = unit;
      this.meaning = meaning;
    }

    /** What it is that practice bounds, for people. */
    String meaning() {
      return meaning;
    }

    /** In which it is told to people; it bounds figures of the kind of this unit. */
    public Unit unit() {
      return unit;
    }

    /** As written in a file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** From {@code low} to {@code high}, in the base of the kind. */
  public record PracticeBound(double low, double high, String asWritten, Source source) {}

  /**
   * A coefficient of variation, a share.
   *
   * @param analyses how many analyses it rests on; empty where untold
   */
  public record DefaultSpread(double share, Source source, OptionalInt analyses) {}

  public Optional<PracticeBound> bound(BoundOf what) {
    return Optional.ofNullable(bounds.get(what));
  }

  /** Default spread of a nutrient as a share of its value. */
  public OptionalDouble spread(String nutrient) {
    DefaultSpread spread = spreads.get(nutrient);
    return spread == null ? OptionalDouble.empty() : OptionalDouble.of(spread.share());
  }
}
