package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.function.Consumer;

/** A line of the recipe that the record of a batch that was made does not tell. */
final class LineNotWeighed implements RecordRule {
  private static final Code CODE = new Code("line-not-weighed");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    if (!batch.record().isMade()) {
      return;
    }
    if (!batch.record().isWeighed()) {
      // A result alone may be one of another batch: that is told where it stands.
      if (!batch.record().tracks().equals(List.of("results"))) {
        out.accept(nothing(batch.record()));
      }
      return;
    }
    for (TargetWeight ask : batch.order().asks()) {
      boolean weighed =
          batch.used().stream()
              .anyMatch(used -> used.ask().index() == ask.index() && used.kg() > 0);
      if (!weighed && ask.kg() > 0) {
        out.accept(
            Finding.error(
                    CODE,
                    batch.record().declared(),
                    "no weight is recorded for "
                        + ask.material().name()
                        + ", the recipe asks for "
                        + Figures.plain(ask.kg(), Unit.KG))
                .seeing("line written", ask.written())
                .noting("the feed as made is computed without it")
                .helping("add what was weighed, or hold the batch if nothing was"));
      }
    }
  }

  /** One finding for all lines: nobody knows what went into it. */
  private static Finding nothing(BatchRecord record) {
    return Finding.error(
            CODE,
            record.declared(),
            record.number() + " was made, and no weight is recorded for any line")
        .noting(
            "the record tells "
                + String.join(", ", record.tracks())
                + ": only a batch that was made has that")
        .helping("write under weighed what went into it, line by line, with its lot and its weight")
        .helping("if it was not made yet, take out of the record what it cannot have yet");
  }
}
