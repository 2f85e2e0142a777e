package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Drying;
import dev.pellucid.engine.data.BatchRecord.Fines;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.trend.BatchYield;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.Measured.What;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was read and weighed of a batch on the mill floor: the last moisture in the dryer against
 * the one that is aimed at, what came into the bags against what was to come out of what was
 * weighed, and the tests of mix and pellets, of which nothing is expected but what they always are.
 */
final class FloorFigures {
  /** How far an aim without a band is missed; half a point, as meters differ. */
  private static final double AIM = DryingOffChart.METER;

  /** A yield that is so many times off is no yield; no source. */
  private static final double FAR = 3;

  private FloorFigures() {}

  static Optional<Measured> dryer(MadeBatch batch) {
    Optional<Drying.Read> last = batch.record().drying().flatMap(Drying::last);
    Optional<Setting> aim =
        batch
            .order()
            .feed()
            .flatMap(
                feed -> DryingOffChart.aim(feed.recipe().process().inOrder(), Property.MOISTURE));
    return last.isPresent() && aim.isPresent()
        ? Optional.of(dryer(last.get(), aim.get()))
        : Optional.empty();
  }

  private static Measured dryer(Drying.Read last, Setting aim) {
    double band = aim.most() - aim.least();
    Measured figure =
        new Measured(
            What.DRYER,
            "dryer",
            "Last moisture in the dryer",
            Unit.PERCENT,
            last.moisture(),
            OptionalDouble.of(aim.aim()),
            OptionalDouble.of(band > 0 ? band / LabFigures.BAND : AIM),
            true,
            last.place());
    return ResultOff.isSlip(figure) ? figure.asSlip() : figure;
  }

  static Optional<Measured> durability(MadeBatch batch) {
    return batch
        .record()
        .durability()
        .map(
            told ->
                bare(
                    What.DURABILITY,
                    "durability",
                    "Durability of the pellets",
                    told.thing().share(),
                    told.place()));
  }

  static Optional<Measured> evenness(MadeBatch batch) {
    return RecordFigureOff.mixer(batch).isPresent()
        ? Optional.empty()
        : batch
            .record()
            .mixer()
            .map(
                told ->
                    bare(
                        What.EVENNESS,
                        "mixer-test",
                        "Variation in the mix",
                        told.thing().variation(),
                        told.place()));
  }

  private static Measured bare(What what, String name, String title, double found, Span place) {
    return new Measured(
        what,
        name,
        title,
        Unit.PERCENT,
        found,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        true,
        place);
  }

  /** Empty where it is not known what was to come out, or what came is a slip. */
  static Optional<BatchYield> yields(MadeBatch batch, ComputedFeed made) {
    BatchRecord record = batch.record();
    Optional<ComputedFeed> planned = batch.order().feed();
    if (planned.isEmpty() || record.bagged().isEmpty() || isOtherwise(batch)) {
      return Optional.empty();
    }
    double kept = batch.used().stream().mapToDouble(one -> one.kg() * one.ask().inFeed()).sum();
    BatchYield one =
        new BatchYield(
            planned.get().bagged() * batch.order().kg() / 100,
            made.balances().expected().finished() * kept / 100,
            made.bagged() * kept / 100,
            bagged(record),
            record.fines().map(Fines::kg).orElse(0.0)
                + record.samples().stream().mapToDouble(it -> it.kg()).sum(),
            made.unpriced().isEmpty()
                ? OptionalDouble.of(made.costPerKg())
                : OptionalDouble.empty());
    double part = one.bagged() / one.expected();
    return part > 1 / FAR && part < FAR ? Optional.of(one) : Optional.empty();
  }

  /** Whether its weights are not what went in. */
  static boolean isOtherwise(MadeBatch batch) {
    return BatchSizeOff.factor(batch).isPresent() || !WeightOffTarget.gross(batch).isEmpty();
  }

  /** kg in its bags that are of this batch; nothing where no bags are told. */
  static double bagged(BatchRecord record) {
    return record.bagged().map(told -> told.thing()).orElse(0.0) - begunWith(record);
  }

  /** kg in its bags that are of an earlier batch. */
  static double begunWith(BatchRecord record) {
    return record.bags().flatMap(it -> it.begunWith()).map(it -> it.kg()).orElse(0.0);
  }

  static Optional<Measured> inBags(MadeBatch batch, BatchYield one) {
    return batch
        .record()
        .bagged()
        .map(
            told ->
                new Measured(
                    What.YIELD,
                    "yield",
                    "Feed in the bags, of what was weighed",
                    Unit.PERCENT,
                    one.bagged() / one.expected(),
                    OptionalDouble.of(1),
                    OptionalDouble.empty(),
                    true,
                    told.place()));
  }
}
