package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Since;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A result of a laboratory that cannot be one of this batch: of a batch that is still to be made,
 * of what no laboratory finds in a feed, or many times what was expected and like it with its point
 * moved. Of days that cannot be, others tell.
 */
final class ResultOff {
  static final Code CODE = new Code("result-off");

  /** So many times off, a content is asked about; common practice, no source. */
  private static final double FAR = 3;

  /** With its point moved it is so near; no source. */
  private static final double NEAR = 1.5;

  /** Within so many spreads nothing is called a slip. */
  private static final double SPREADS = 6;

  private ResultOff() {}

  /** Whether it is far off what was expected, and near it with its point moved. */
  static boolean isSlip(Measured figure) {
    return isSlip(figure, figure.found());
  }

  /** The same of one of several results from which the figure is the mean. */
  static boolean isSlip(Measured figure, double found) {
    return meant(figure, found).isPresent();
  }

  private static Optional<Double> meant(Measured figure, double found) {
    if (figure.expected().isEmpty() || !(figure.expected().getAsDouble() > 0)) {
      return Optional.empty();
    }
    double expected = figure.expected().getAsDouble();
    double off = Math.abs(found - expected);
    boolean far = found > expected * FAR || found < expected / FAR;
    boolean beyond = off > SPREADS * figure.spread().orElse(0);
    return far && beyond
        ? TenTimes.moved(found, expected / NEAR, expected * NEAR)
        : Optional.empty();
  }

  /**
   * Looks at all results of a folder.
   *
   * @param measured what was found of the batches that were made
   */
  static void look(FeedTables tables, List<MeasuredBatch> measured, Consumer<Finding> out) {
    for (BatchRecord record : tables.batches().values()) {
      for (Since.Result result : record.since().results()) {
        if (!record.isWeighed() && !LabResults.isBefore(result, record)) {
          out.accept(ofNothing(record, result));
        }
        result.found().forEach((name, one) -> unfindable(tables, name, one).ifPresent(out));
      }
    }
    for (MeasuredBatch batch : measured) {
      batch.figures().stream()
          .filter(one -> one.what().ofLaboratory())
          .flatMap(one -> meant(one, one.found()).map(meant -> slip(one, meant)).stream())
          .forEach(out);
    }
  }

  private static Finding ofNothing(BatchRecord record, Since.Result result) {
    return Finding.warning(
            CODE,
            result.signed().place(),
            "a result of " + record.number() + ", of which nothing was weighed yet")
        .helping("write what was weighed, or move the result to the record of its own batch");
  }

  private static Optional<Finding> unfindable(FeedTables tables, String name, Content one) {
    return tables
        .nutrients()
        .named(name)
        .filter(nutrient -> !nutrient.analysed())
        .map(nutrient -> unfindable(nutrient, one));
  }

  private static Finding unfindable(Nutrient nutrient, Content one) {
    return Finding.warning(
            CODE, one.place(), "no laboratory finds " + nutrient.name() + " in a feed")
        .noting("nutrients/ says so with analysed: no")
        .helping("write what was found by the name of what was analysed");
  }

  private static Finding slip(Measured figure, double meant) {
    return Finding.warning(
            CODE,
            figure.place(),
            figure.name()
                + " was found to be "
                + Figures.plain(figure.found(), figure.unit())
                + ", as made "
                + Figures.plain(figure.expected().orElse(0), figure.unit())
                + " was expected")
        .noting("it is left out of the course of its figures")
        .helping(Meant.question(Figures.plain(meant, figure.unit())));
  }
}
