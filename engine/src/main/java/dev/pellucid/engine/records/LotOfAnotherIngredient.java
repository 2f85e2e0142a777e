package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;
import java.util.function.Consumer;

/** A line that names a lot of something else: the wrong number, or the wrong sack. */
final class LotOfAnotherIngredient implements RecordRule {
  private static final Code CODE = new Code("lot-of-another-ingredient");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    for (Used used : batch.used()) {
      String line = used.ask().lotsOf();
      Optional<Lot> lot = batch.lot(used.entry());
      lot.map(Lot::ingredient)
          .or(() -> batch.batch(used.entry()).map(BatchRecord::code))
          .filter(what -> !what.equals(line))
          // That it is made of itself is told by itself.
          .filter(what -> !used.entry().lot().equals(batch.record().number()))
          .ifPresent(
              what ->
                  out.accept(
                      Finding.error(
                              CODE,
                              used.entry().lotPlace(),
                              "lot " + used.entry().lot() + " is of " + what + ", not of " + line)
                          .helping(
                              used.ask()
                                  .material()
                                  .opened(
                                      single ->
                                          "look at the sack: fix the number, or hold the batch",
                                      premix -> "name the batch of " + line + " that was used"))));
    }
  }
}
