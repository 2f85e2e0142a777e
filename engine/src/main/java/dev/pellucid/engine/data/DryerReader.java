package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FigureReader.Ends;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.PlantVocabulary.DryerKind;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The dryers of a plant: rows of {@code dryers}, or the one with trays that {@code tray-load} and
 * {@code trays} of the plant itself tell.
 */
final class DryerReader {
  static final Code CODE = new Code("data-dryer");

  private final List<Mixer> mixers;
  private final Remarks remarks;
  private final FigureReader figures;
  private final PlantChecks checks;

  DryerReader(List<Mixer> mixers, Remarks remarks) {
    this.mixers = mixers;
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
    this.checks = new PlantChecks(remarks);
  }

  List<Dryer> dryers(Fields plant) {
    List<Dryer> dryers = new ArrayList<>();
    Optional<Dryer.Trays> trays = trays(plant, PlantVocabulary.TRAY_LOAD, PlantVocabulary.TRAYS);
    if (!plant.has(PlantVocabulary.DRYERS)) {
      if (trays.isPresent()) {
        dryers.add(new Dryer("dryer", trays.get(), Optional.empty()));
      }
      return dryers;
    }
    toldTwice(plant, PlantVocabulary.TRAY_LOAD);
    toldTwice(plant, PlantVocabulary.TRAYS);
    for (Fields block : plant.blocks(PlantVocabulary.DRYERS)) {
      Optional<Dryer> dryer = dryer(block);
      if (dryer.isPresent()) {
        dryers.add(dryer.get());
      }
    }
    return dryers;
  }

  private void toldTwice(Fields plant, Key<Text> key) {
    if (plant.has(key)) {
      remarks.add(
          Finding.error(
                  CODE,
                  plant.placeOf(key),
                  key.name()
                      + " of the plant may not stand beside dryers: each row of dryers has its own")
              .helping("write " + key.name() + " in the row of dryers that has trays"));
    }
  }

  private Optional<Dryer> dryer(Fields block) {
    Optional<DryerKind> kind = block.oneOf(PlantVocabulary.DRYER_KIND, "a kind of dryer");
    Optional<Scalar> temperature = block.text(PlantVocabulary.DRYER_TEMPERATURE);
    Optional<Ends> ends = figures.range(temperature, Kind.TEMPERATURE);
    if (kind.isEmpty() || (temperature.isPresent() && ends.isEmpty())) {
      return Optional.empty();
    }
    Optional<? extends Dryer.Way> way =
        switch (kind.get()) {
          case TRAYS -> onTrays(block);
          case BED -> blown(block, "bed").map(one -> new Dryer.Bed(one.perHour(), one.holds()));
          case BELT -> blown(block, "belt").map(one -> new Dryer.Belt(one.perHour(), one.holds()));
        };
    Optional<Dryer.Warmth> warmth =
        ends.isPresent()
            ? Optional.of(
                new Dryer.Warmth(ends.get().low(), ends.get().high(), temperature.get().text()))
            : Optional.empty();
    return way.isPresent()
        ? Optional.of(
            new Dryer(block.textOr(PlantVocabulary.DRYER_NAME, "dryer"), way.get(), warmth))
        : Optional.empty();
  }

  private Optional<Dryer.Trays> onTrays(Fields block) {
    boolean foreign = isForeign(block, PlantVocabulary.DRYER_WATER, "trays");
    foreign |= isForeign(block, PlantVocabulary.DRYER_HOLDS, "trays");
    Optional<Dryer.Trays> trays =
        trays(block, PlantVocabulary.DRYER_TRAY_LOAD, PlantVocabulary.DRYER_TRAYS);
    if (!foreign && !block.has(PlantVocabulary.DRYER_TRAY_LOAD)) {
      lacks(block, "trays", "the wet feed on one tray", "tray-load: 2 kg");
    }
    return foreign ? Optional.empty() : trays;
  }

  private Optional<Dryer.Trays> trays(Fields fields, Key<Text> loadKey, Key<Text> countKey) {
    OptionalDouble load = figures.positive(fields.text(loadKey), Extent.WEIGHT);
    CommonSpan.TRAY_LOAD.look(fields.text(loadKey), load, remarks);
    OptionalInt count = figures.count(fields.text(countKey));
    checks.lookAtTrays(fields.text(countKey), count);
    return load.isPresent()
        ? Optional.of(new Dryer.Trays(load.getAsDouble(), count))
        : Optional.empty();
  }

  /** What a bed and a belt tell alike. */
  private record Blown(double perHour, OptionalDouble holds) {}

  private Optional<Blown> blown(Fields block, String kind) {
    boolean foreign = isForeign(block, PlantVocabulary.DRYER_TRAY_LOAD, kind);
    foreign |= isForeign(block, PlantVocabulary.DRYER_TRAYS, kind);
    Optional<Scalar> water = block.text(PlantVocabulary.DRYER_WATER);
    OptionalDouble perHour = figures.positive(water, Extent.WEIGHT);
    Optional<Scalar> held = block.text(PlantVocabulary.DRYER_HOLDS);
    OptionalDouble holds = figures.positive(held, Extent.WEIGHT);
    if (!foreign && !block.has(PlantVocabulary.DRYER_WATER)) {
      lacks(block, kind, "the water that it takes off in an hour", "water-per-hour: 100 kg");
    }
    if (foreign || perHour.isEmpty() || (held.isPresent() && holds.isEmpty())) {
      return Optional.empty();
    }
    int before = remarks.findings().size();
    checks.lookAtLoad(held, holds, "dryer", mixers);
    if (remarks.findings().size() == before) {
      checks.lookAtDryer(water.get(), perHour.getAsDouble(), holds);
    }
    return Optional.of(new Blown(perHour.getAsDouble(), holds));
  }

  private boolean isForeign(Fields block, Key<Text> key, String kind) {
    if (!block.has(key)) {
      return false;
    }
    remarks.add(
        Finding.error(
                CODE, block.placeOf(key), key.name() + " cannot be told of a dryer of kind " + kind)
            .helping(
                kind.equals("trays")
                    ? "tell tray-load and trays, or write kind: bed or kind: belt"
                    : "tell water-per-hour and holds, or write kind: trays"));
    return true;
  }

  private void lacks(Fields block, String kind, String what, String example) {
    remarks.add(
        Finding.error(
                CODE,
                block.placeOf(PlantVocabulary.DRYER_KIND),
                "a dryer of kind " + kind + " must tell " + what)
            .helping("write it: " + example));
  }
}
