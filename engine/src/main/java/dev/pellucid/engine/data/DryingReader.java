package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Drying;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How the drying of a batch was followed. */
final class DryingReader {
  /** A load that lost so much was hardly weighed right; common practice, no source. */
  private static final double MOST_LOST = 3;

  /** So much a meter and the weight of a tray may differ; common practice, no source. */
  private static final double APART = 0.01;

  private final FigureReader figures;
  private final Remarks remarks;

  DryingReader(FigureReader figures, Remarks remarks) {
    this.figures = figures;
    this.remarks = remarks;
  }

  Optional<Drying> drying(Fields block) {
    OptionalDouble before = share(block, BatchVocabulary.DRYING_BEFORE);
    OptionalDouble load = figures.positive(block.text(BatchVocabulary.DRYING_LOAD), Extent.WEIGHT);
    if (before.isEmpty()) {
      return Optional.empty();
    }
    List<Fields> written = block.blocks(BatchVocabulary.DRYING_READINGS);
    if (load.isPresent()) {
      Trays trays = trays(written);
      if (trays.count() > 1 && isLoadOff(block, trays, load.getAsDouble())) {
        return Optional.empty();
      }
      if (trays.count() > 1 && trays.most() < load.getAsDouble() * (1 - before.getAsDouble())) {
        remarks.add(
            LotFindings.record(
                block.placeOf(BatchVocabulary.DRYING_BEFORE),
                "all trays lost more than the "
                    + Figures.plain(before.getAsDouble(), Unit.PERCENT)
                    + " of water that went in with them",
                "look at the moisture before drying, and at the load"));
        return Optional.empty();
      }
    }
    List<Drying.Read> readings = new ArrayList<>();
    for (Fields one : written) {
      reading(one, before.getAsDouble(), load).ifPresent(readings::add);
    }
    return Optional.of(
        new Drying(
            new Located<>(before.getAsDouble(), block.placeOf(BatchVocabulary.DRYING_BEFORE)),
            readings,
            readings.size() == written.size()));
  }

  /** The heaviest and the lightest of so many trays, kg. */
  private record Trays(int count, double least, double most) {}

  private Trays trays(List<Fields> readings) {
    int count = 0;
    double least = Double.MAX_VALUE;
    double most = 0;
    for (Fields one : readings) {
      // What cannot be read is told where the readings are read.
      OptionalDouble tray =
          new FigureReader(new Remarks())
              .positive(one.text(BatchVocabulary.READING_TRAY), Extent.WEIGHT);
      if (tray.isPresent()) {
        count++;
        least = Math.min(least, tray.getAsDouble());
        most = Math.max(most, tray.getAsDouble());
      }
    }
    return new Trays(count, least, most);
  }

  private boolean isLoadOff(Fields block, Trays trays, double load) {
    boolean little = trays.least() > load * MOST_LOST;
    boolean much = load > trays.most() * MOST_LOST;
    if (little || much) {
      remarks.add(
          LotFindings.record(
              block.placeOf(BatchVocabulary.DRYING_LOAD),
              "a load of "
                  + Figures.plain(load, Unit.KG)
                  + " cannot have become trays of "
                  + Figures.plain(trays.least(), Unit.KG)
                  + " to "
                  + Figures.plain(trays.most(), Unit.KG),
              "look at the load again: it is what lay on one tray before drying"));
    }
    return little || much;
  }

  private Optional<Drying.Read> reading(Fields block, double before, OptionalDouble load) {
    OptionalDouble hours = figures.base(block.text(BatchVocabulary.READING_AT), Kind.TIME);
    boolean read = block.has(BatchVocabulary.READING_MOISTURE);
    boolean weighed = block.has(BatchVocabulary.READING_TRAY);
    if (!read && (!weighed || load.isEmpty())) {
      remarks.add(
          LotFindings.record(
              block.place(),
              "a reading is a moisture, or the weight of a tray whose load is told",
              "write moisture: 12 %, or tray: 1.7 kg and load: 2 kg above the readings"));
      return Optional.empty();
    }
    OptionalDouble tray = figures.positive(block.text(BatchVocabulary.READING_TRAY), Extent.WEIGHT);
    if (read) {
      OptionalDouble moisture = share(block, BatchVocabulary.READING_MOISTURE);
      if (moisture.isPresent() && tray.isPresent() && load.isPresent()) {
        double dry = load.getAsDouble() * (1 - before);
        beside(block, moisture.getAsDouble(), dry, tray.getAsDouble());
      }
      return hours.isPresent() && moisture.isPresent()
          ? Optional.of(
              new Drying.Read(
                  hours.getAsDouble(),
                  moisture.getAsDouble(),
                  block.placeOf(BatchVocabulary.READING_AT),
                  block.placeOf(BatchVocabulary.READING_MOISTURE)))
          : Optional.empty();
    }
    return hours.isPresent() && tray.isPresent()
        ? ofTray(block, hours.getAsDouble(), load.getAsDouble() * (1 - before), tray.getAsDouble())
        : Optional.empty();
  }

  /** Where a tray was read and weighed, its moisture counts as it was read. */
  private void beside(Fields block, double moisture, double dry, double tray) {
    double weighed = 1 - dry / tray;
    if (Closeness.isAtMost(Math.abs(moisture - weighed), APART)) {
      return;
    }
    remarks.add(
        Finding.warning(
                LotFindings.RECORD,
                block.placeOf(BatchVocabulary.READING_TRAY),
                (weighed < 0
                        ? "a tray of "
                            + Figures.plain(tray, Unit.KG)
                            + " weighs less than the dry matter that was loaded onto it"
                        : "a tray of "
                            + Figures.plain(tray, Unit.KG)
                            + " has a moisture of "
                            + Figures.plain(weighed, Unit.PERCENT))
                    + ", "
                    + Figures.plain(moisture, Unit.PERCENT)
                    + " was read")
            .noting("what was read counts")
            .helping(
                "weigh the tray again, net, and look at the load and the moisture before drying")
            .helping("or read again, from the middle of the load"));
  }

  /** Dry matter stays on the tray, so that its share of the weight tells the moisture. */
  private Optional<Drying.Read> ofTray(Fields block, double hours, double dry, double tray) {
    if (tray < dry) {
      remarks.add(
          LotFindings.record(
              block.placeOf(BatchVocabulary.READING_TRAY),
              "the tray weighs less than the dry matter that was loaded onto it",
              "look at the weights again, net of the tray itself"));
      return Optional.empty();
    }
    return Optional.of(
        new Drying.Read(
            hours,
            1 - dry / tray,
            block.placeOf(BatchVocabulary.READING_AT),
            block.placeOf(BatchVocabulary.READING_TRAY)));
  }

  private OptionalDouble share(Fields fields, Key<Text> key) {
    return figures.share(fields.text(key));
  }
}
