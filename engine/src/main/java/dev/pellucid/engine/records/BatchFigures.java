package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.trend.BatchYield;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.MeasuredBatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was found of a batch beside what was to be expected of it, as it was made: by the folder
 * that it was held against, today's or that of its own day.
 */
final class BatchFigures {
  private BatchFigures() {}

  /** Empty of a batch that is still to be made. */
  static Optional<MeasuredBatch> of(MadeBatch batch) {
    BatchRecord record = batch.record();
    if (!record.isMade()) {
      return Optional.empty();
    }
    Optional<ComputedFeed> made = batch.made().flatMap(Computation::feed);
    Optional<BatchYield> yields = made.flatMap(feed -> FloorFigures.yields(batch, feed));
    List<Measured> figures = new ArrayList<>();
    FloorFigures.dryer(batch).ifPresent(figures::add);
    made.ifPresent(feed -> LabFigures.of(batch, feed).forEach(it -> figures.add(sure(batch, it))));
    yields.flatMap(one -> FloorFigures.inBags(batch, one)).ifPresent(figures::add);
    FloorFigures.durability(batch).ifPresent(figures::add);
    FloorFigures.evenness(batch).ifPresent(figures::add);
    return Optional.of(
        new MeasuredBatch(
            record.code(),
            record.number(),
            record.day(),
            record.serial(),
            standing(record),
            record.closed(),
            figures,
            yields));
  }

  /** A slip is none of what was found; and by weights that are slips nothing can be expected. */
  private static Measured sure(MadeBatch batch, Measured figure) {
    boolean unsure = !WeightOffTarget.gross(batch).isEmpty() || ResultOff.isSlip(figure);
    return unsure ? figure.asSlip() : figure;
  }

  private static String standing(BatchRecord record) {
    return record
        .standing()
        .map(it -> it.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .orElse("");
  }
}
