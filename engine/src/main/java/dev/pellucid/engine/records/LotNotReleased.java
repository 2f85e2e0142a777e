package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.engine.records.PutInto.Brought;
import dev.pellucid.engine.records.PutInto.How;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A batch of premix or feed that was rejected or is held, and goes into another all the same: it is
 * weighed in, or its part bag, its fines or the flush that was run after it are put in.
 */
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
    for (Brought brought : batch.put().into(batch.record(), batch.day())) {
      if (!isWeighed(batch, brought) && isStopped(brought.of(), batch)) {
        out.accept(finding(batch, brought));
      }
    }
  }

  /** Fines that the batch weighs itself are told at their line. */
  private static boolean isWeighed(MadeBatch batch, Brought brought) {
    return brought.how() == How.FINES
        && batch.used().stream().anyMatch(used -> used.entry().lot().equals(brought.of().number()));
  }

  /** What other records tell stands in no line of this one, and is to be fixed there. */
  private static Finding finding(MadeBatch batch, Brought brought) {
    String number = brought.by().number();
    String goes =
        switch (brought.how()) {
          case PART_BAG -> " and goes into ";
          case FINES -> ", and its fines go into ";
          case FLUSH -> ", and the flush that was run after it goes into ";
        };
    if (brought.how() == How.PART_BAG) {
      return helped(batch, told(batch, brought.place(), brought.of(), goes));
    }
    Finding finding =
        told(batch, batch.record().declared(), brought.of(), goes)
            .seeing(brought.key() + " written", brought.place());
    if (batch.record().isMade()) {
      return helped(batch, finding);
    }
    return brought.how() == How.FINES
        ? finding.helping(
            "keep these fines out, and write where they are now in fines: to of " + number)
        : flush(finding, brought.by());
  }

  private static Finding flush(Finding finding, BatchRecord by) {
    Finding kept =
        finding.helping(
            "keep this flush out and marked, and write where it is kept in flushed: to of "
                + by.number());
    return by.isMade()
        ? kept
        : kept.helping("or clean the line before it is flushed, and write cleaned: in that record");
  }

  private static boolean isStopped(BatchRecord source, MadeBatch batch) {
    return source.standingOn(known(batch)).filter(HeldLater::isStop).isPresent();
  }

  /** The day of a batch that is made: what was decided later is told by itself. */
  private static LocalDate known(MadeBatch batch) {
    return batch.record().isMade() ? batch.record().day() : LocalDate.MAX;
  }

  private static Finding finding(MadeBatch batch, Span at, BatchRecord source) {
    return helped(batch, told(batch, at, source, " and goes into "));
  }

  private static Finding helped(MadeBatch batch, Finding finding) {
    return finding.helping(
        batch.record().isMade()
            ? "hold this batch too until someone who may has decided"
            : "take another batch, or have it released first");
  }

  private static Finding told(MadeBatch batch, Span at, BatchRecord source, String goes) {
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
                    + goes
                    + batch.record().number())
            .seeing(later ? "decision written" : "release written", place);
    return because.isEmpty() ? finding : finding.noting("because: " + because);
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
