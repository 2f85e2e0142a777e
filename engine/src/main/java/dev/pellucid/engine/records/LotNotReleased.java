package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Optional;
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
          .filter(source -> isStopped(source, batch))
          .ifPresent(source -> out.accept(finding(batch, used.entry().lotPlace(), source)));
    }
    batch
        .record()
        .bags()
        .flatMap(BatchRecord.Bags::begunWith)
        .ifPresent(bag -> partBag(batch, bag, out));
  }

  /** A part bag of such a batch that was filled up. */
  private static void partBag(MadeBatch batch, BatchRecord.BegunWith bag, Consumer<Finding> out) {
    BatchRecord source = batch.tables().batches().get(bag.batch());
    if (source != null && isStopped(source, batch)) {
      out.accept(finding(batch, bag.place(), source));
    }
  }

  private static boolean isStopped(BatchRecord source, MadeBatch batch) {
    return source.standingOn(known(batch)).filter(HeldLater::isStop).isPresent();
  }

  /** The day of a batch that is made: what was decided later is told by itself. */
  private static LocalDate known(MadeBatch batch) {
    return batch.record().isMade() ? batch.record().day() : LocalDate.MAX;
  }

  private static Finding finding(MadeBatch batch, Span at, BatchRecord source) {
    Optional<Release> last = source.decidedOn(known(batch));
    String by = last.map(Release::by).orElse("");
    String because = last.map(Release::because).orElse("");
    Span place = last.map(Release::place).orElse(source.declared());
    boolean later = !last.equals(source.release());
    Finding finding =
        Finding.error(
                CODE,
                at,
                "batch "
                    + source.number()
                    + was(last.map(Release::decision))
                    + by
                    + " and goes into "
                    + batch.record().number())
            .seeing(later ? "decision written" : "release written", place);
    return (because.isEmpty() ? finding : finding.noting("because: " + because))
        .helping(
            batch.record().isMade()
                ? "hold this batch too until someone who may has decided"
                : "take another batch, or have it released first");
  }

  private static String was(Optional<Decision> decision) {
    return switch (decision.orElse(Decision.HELD)) {
      case RELEASED, HELD -> " is held by ";
      case REJECTED -> " was rejected by ";
      case ON_HOLD -> " was put on hold by ";
      case WITHDRAWN -> " was called back by ";
    };
  }
}
