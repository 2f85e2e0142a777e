package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * All that was weighed is off by one factor: then it is not the weights that are wrong, but the
 * size of the batch they are held against. While nothing is weighed, a size is looked at that is
 * that of the recipe with its point moved, and that no other batch of it has.
 */
final class BatchSizeOff implements RecordRule {
  private static final Code CODE = new Code("batch-size-off");

  /** A size is the usual one if it is so near; common practice, no source. */
  private static final double NEAR = 0.05;

  /** Another batch was as large if it had half of it or more, and no more than twice. */
  private static final double AS_LARGE = 2;

  /** Of fewer lines a factor tells nothing. */
  private static final int FEWEST = 3;

  /** Weights that belong together are off by nearly the same; common practice, no source. */
  private static final double ALIKE = 0.2;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    planned(batch).ifPresent(out);
    OptionalDouble factor = factor(batch);
    if (factor.isPresent()) {
      double kg = batch.order().kg();
      String meant = Figures.plain(meant(kg, factor.getAsDouble()), Unit.KG);
      out.accept(
          Finding.warning(
                  CODE,
                  batch.record().declared(),
                  "all weights are "
                      + TenTimes.words(factor.getAsDouble())
                      + " what a batch of "
                      + Figures.plain(kg, Unit.KG)
                      + " asks for")
              .helping(Meant.question("size: " + meant))
              .helping("if so much was made on purpose, write that as the size of the batch"));
    }
  }

  private static Optional<Finding> planned(MadeBatch batch) {
    BatchRecord record = batch.record();
    Optional<BatchSize> usual = batch.order().feed().flatMap(feed -> feed.recipe().batch());
    if (!record.isPlanned() || usual.isEmpty() || isUsual(batch)) {
      return Optional.empty();
    }
    double kg = usual.get().kg();
    return TenTimes.moved(record.kg(), kg * (1 - NEAR), kg * (1 + NEAR))
        .map(
            meant ->
                Finding.warning(
                        CODE,
                        record.declared(),
                        record.number()
                            + " is planned as "
                            + Figures.plain(record.kg(), Unit.KG)
                            + ", a batch of its recipe is "
                            + Figures.plain(kg, Unit.KG))
                    .seeing("batch of the recipe", usual.get().written().span())
                    .helping(Meant.question("size: " + Figures.plain(meant, Unit.KG)))
                    .helping("if so much is to be made, leave it: it is told until one was made"));
  }

  private static boolean isUsual(MadeBatch batch) {
    BatchRecord record = batch.record();
    return batch.tables().batches().values().stream()
        .filter(other -> other.isMade() && other.code().equals(record.code()))
        .anyMatch(
            other -> other.kg() >= record.kg() / AS_LARGE && other.kg() <= record.kg() * AS_LARGE);
  }

  /** By how much all weights are off together; empty where they are not, or not by much. */
  static OptionalDouble factor(MadeBatch batch) {
    if (!batch.record().isMade()) {
      return OptionalDouble.empty();
    }
    double[] factors = new double[batch.order().asks().size()];
    int count = 0;
    for (TargetWeight ask : batch.order().asks()) {
      double kg = 0;
      for (Used one : batch.used()) {
        kg += one.ask().index() == ask.index() ? one.kg() : 0;
      }
      if (kg > 0 && ask.kg() > 0) {
        factors[count++] = kg / ask.kg();
      }
    }
    if (count < FEWEST) {
      return OptionalDouble.empty();
    }
    Arrays.sort(factors, 0, count);
    double middle = factors[count / 2];
    boolean alike =
        factors[0] >= middle * (1 - ALIKE) && factors[count - 1] <= middle * (1 + ALIKE);
    return alike && WeightOffTarget.isGross(middle, 1)
        ? OptionalDouble.of(middle)
        : OptionalDouble.empty();
  }

  private static double meant(double kg, double factor) {
    Optional<Double> moved =
        TenTimes.moved(kg, kg * factor * (1 - ALIKE), kg * factor * (1 + ALIKE));
    return moved.orElse(Math.rint(kg * factor * 10) / 10);
  }
}
