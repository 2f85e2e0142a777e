package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.data.Since;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
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

  /** On the day of a batch that is made; what was decided later is told by itself. */
  private static boolean isStopped(BatchRecord source, MadeBatch batch) {
    return batch.record().isMade()
        ? source.standingOn(batch.record().day()).filter(HeldLater::isStop).isPresent()
        : source.isRejected() || source.isHeld();
  }

  private static Finding finding(MadeBatch batch, Span at, BatchRecord source) {
    Optional<Since.Decided> later = later(source, batch);
    String by =
        later.map(it -> it.signed().by()).orElse(source.release().map(Release::by).orElse(""));
    String because =
        later
            .map(it -> it.signed().because())
            .orElse(source.release().map(Release::because).orElse(""));
    Span place =
        later
            .map(it -> it.signed().place())
            .orElse(source.release().map(Release::place).orElse(source.declared()));
    Finding finding =
        Finding.error(
                CODE,
                at,
                "batch "
                    + source.number()
                    + was(
                        later
                            .map(Since.Decided::decision)
                            .or(() -> source.release().map(Release::decision)))
                    + by
                    + " and goes into "
                    + batch.record().number())
            .seeing(later.isPresent() ? "decision written" : "release written", place);
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

  /** The last that was decided after its release, by the day that counts. */
  private static Optional<Since.Decided> later(BatchRecord source, MadeBatch batch) {
    Since.Decided last = null;
    for (Since.Decided one : source.since().decisions()) {
      boolean counts =
          !batch.record().isMade() || !one.signed().day().isAfter(batch.record().day());
      if (counts && (last == null || !one.signed().day().isBefore(last.signed().day()))) {
        last = one;
      }
    }
    return Optional.ofNullable(last);
  }
}
