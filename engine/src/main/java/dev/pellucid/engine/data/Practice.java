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
    /** Moisture of the finished feed, a share. */
    FINISHED_MOISTURE(Unit.PERCENT),
    /** °C. */
    CONDITIONING_TEMPERATURE(Unit.CELSIUS),
    /** Hours in the steam. */
    CONDITIONING_TIME(Unit.SECOND),
    /** °C in the press. */
    PELLETING_TEMPERATURE(Unit.CELSIUS),
    /** °C in the barrel, cold extruders included. */
    EXTRUDING_TEMPERATURE(Unit.CELSIUS),
    /** °C in the barrel from which on a feed expands, so that it floats. */
    EXPANDING_TEMPERATURE(Unit.CELSIUS),
    /** °C of the pellets after the cooler. */
    COOLING_TEMPERATURE(Unit.CELSIUS),
    /** °C of the oil. */
    COATING_TEMPERATURE(Unit.CELSIUS),
    /** °C of the store. */
    STORAGE_TEMPERATURE(Unit.CELSIUS),
    /** Water added to a mix that no steam heats, as a share of the mix. */
    WATER_WITHOUT_STEAM(Unit.PERCENT),
    /** Water added beside steam to a mix that is extruded, as a share of the mix. */
    WATER_BESIDE_STEAM(Unit.PERCENT),
    /** °C. */
    DRYING_TEMPERATURE(Unit.CELSIUS),
    /** Hours. */
    DRYING_TIME(Unit.HOUR),
    /** Hours until the last tray of a batch is dry. */
    DRYING_OF_BATCH(Unit.DAY),
    /** Hours, where no mixer tells its own. */
    BLENDING_TIME(Unit.MINUTE),
    /** Hours a premix is blended. */
    PREMIX_BLENDING_TIME(Unit.MINUTE),
    /** Screen hole as a share of the die hole. */
    SCREEN_OF_DIE(Unit.PERCENT),
    /** Length of the cut as a share of the die hole. */
    LENGTH_OF_DIE(Unit.PERCENT),
    /** Screen hole of the sieve as a share of the die hole. */
    SIEVE_OF_DIE(Unit.PERCENT),
    /** Starch in the mix of a floating extruded feed, a share. */
    STARCH_FLOATING(Unit.PERCENT),
    /** Starch in the mix of a sinking extruded feed, a share. */
    STARCH_SINKING(Unit.PERCENT),
    /** Fat in the mix before the die of a pellet mill, a share. */
    FAT_BEFORE_PELLETING(Unit.PERCENT),
    /** Fat in the mix before the die of an extruder, a share. */
    FAT_BEFORE_EXTRUDING(Unit.PERCENT),
    /** Finished feed that is worked in again, as a share of the mix. */
    REWORK(Unit.PERCENT),
    /** Oil by hand per kernel, a share. */
    OIL_BY_HAND(Unit.PERCENT),
    /** Oil in a drum per kernel, a share. */
    OIL_IN_DRUM(Unit.PERCENT),
    /** Oil under vacuum per kernel, a share. */
    OIL_UNDER_VACUUM(Unit.PERCENT),
    /** Coefficient of variation of a mix, a share. */
    MIXING_VARIATION(Unit.PERCENT),
    /** The same for premixes, which bring it into every feed. */
    MIXING_VARIATION_STRICT(Unit.PERCENT),
    /** Mean diameter of the ground mix as a share of the hole of the die. */
    GRIND_OF_DIE(Unit.PERCENT),
    /** Pellets that are left after tumbling, a share. */
    DURABILITY(Unit.PERCENT),
    /** What was bagged as a share of what was planned. */
    YIELD_OF_PLAN(Unit.PERCENT),
    /** How far a weight may be off where the line is weighed apart, a share of the weight. */
    WEIGHING_MICRO(Unit.PERCENT),
    /** How far a weight may be off on the large scale, a share of the weight. */
    WEIGHING_MACRO(Unit.PERCENT),
    /** What is diluted, as a share of what a step of dilution makes. */
    DILUTION_STEP(Unit.PERCENT),
    /** Hours a feed keeps. */
    SHELF_LIFE(Unit.DAY),
    /** Hours a premix keeps. */
    PREMIX_SHELF_LIFE(Unit.DAY);

    private final Unit unit;

    BoundOf(Unit unit) {
      this.unit = unit;
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
