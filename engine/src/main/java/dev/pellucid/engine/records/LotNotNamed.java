package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.function.Consumer;

/** A line that was weighed from nobody knows what, though the folder keeps lots of it. */
final class LotNotNamed implements RecordRule {
  private static final Code CODE = new Code("lot-not-named");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    for (Used used : batch.used()) {
      String line = used.ask().material().name();
      String of = used.ask().lotsOf();
      if (used.entry().kg().isPresent() && isUntold(used.entry()) && wasThere(batch, of)) {
        out.accept(
            Finding.warning(CODE, used.entry().name(), line + " was weighed from a lot not named")
                .helping("write lot: and its number; the trace of the batch ends here without it"));
      }
    }
  }

  /** A number that is written and is none was told where it was read. */
  private static boolean isUntold(Entry entry) {
    return entry.written().isBlank() && entry.bin().isEmpty();
  }

  /** Whether the store had any by then; what came later accuses no batch. */
  private static boolean wasThere(MadeBatch batch, String of) {
    LocalDate day = batch.record().day();
    return batch.tables().lots().values().stream()
            .anyMatch(lot -> lot.ingredient().equals(of) && !lot.received().isAfter(day))
        || batch.tables().batches().values().stream()
            .anyMatch(it -> it.code().equals(of) && !it.day().isAfter(day));
  }
}
