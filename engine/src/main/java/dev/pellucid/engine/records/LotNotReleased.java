package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.function.Consumer;

/** A batch of premix or feed that was rejected or is held, and goes into another all the same. */
final class LotNotReleased implements RecordRule {
  private static final Code CODE = new Code("lot-not-released");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    for (Used used : batch.used()) {
      batch
          .batch(used.entry())
          .filter(source -> source.isRejected() || source.isHeld())
          .ifPresent(source -> out.accept(finding(batch, used, source)));
    }
  }

  private static Finding finding(MadeBatch batch, Used used, BatchRecord source) {
    BatchRecord.Release release = source.release().orElseThrow();
    Finding finding =
        Finding.error(
                CODE,
                used.entry().lotPlace(),
                "batch "
                    + source.number()
                    + (source.isRejected() ? " was rejected by " : " is held by ")
                    + release.by()
                    + " and goes into "
                    + batch.record().number())
            .seeing("release written", release.place());
    return (release.because().isEmpty() ? finding : finding.noting("because: " + release.because()))
        .helping(
            batch.record().isMade()
                ? "hold this batch too until someone who may has decided"
                : "take another batch, or have it released first");
  }
}
