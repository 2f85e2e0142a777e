package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Drying;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Since;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The moisture of what a laboratory had: the one that was found in the same sample, else the last
 * that is known of the batch, else the one that its recipe aims at.
 *
 * @param share of the sample, less than 1
 * @param words which of them it is, with the figure, for a note
 */
record SampleMoisture(double share, String words) {

  /**
   * Of one result.
   *
   * @param isSlip whether a moisture is a slip of the pen, by which nothing is to be reckoned
   */
  static SampleMoisture of(
      BatchRecord record, Since.Result result, ComputedFeed ordered, Predicate<Content> isSlip) {
    Optional<SampleMoisture> same =
        found(result, isSlip).map(share -> told(share, "was found in the same sample"));
    return same.or(() -> inAnother(record, isSlip))
        .or(() -> inDryer(record))
        .orElseGet(
            () ->
                told(
                    ordered.balances().expected().moisture(),
                    "is what the recipe aims at, none was found"));
  }

  private static Optional<Double> found(Since.Result result, Predicate<Content> isSlip) {
    return Optional.ofNullable(result.found().get(Nutrients.MOISTURE))
        .filter(one -> !one.isBound() && one.low() < 1 && !isSlip.test(one))
        .map(Content::low);
  }

  /** The last one. */
  private static Optional<SampleMoisture> inAnother(BatchRecord record, Predicate<Content> isSlip) {
    return record.since().results().stream()
        .filter(one -> !LabResults.isBefore(one, record))
        .flatMap(one -> found(one, isSlip).stream())
        .reduce((first, second) -> second)
        .map(share -> told(share, "was found in another sample of the batch"));
  }

  private static Optional<SampleMoisture> inDryer(BatchRecord record) {
    return record
        .drying()
        .flatMap(Drying::last)
        .map(last -> told(last.moisture(), "is the last that was read in the dryer"));
  }

  private static SampleMoisture told(double share, String which) {
    return new SampleMoisture(
        share, "the moisture of " + Figures.plain(share, Unit.PERCENT) + " " + which);
  }
}
