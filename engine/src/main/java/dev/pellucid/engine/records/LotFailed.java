package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState.State;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A lot that failed its inspection. */
final class LotFailed extends LotRule {
  LotFailed() {
    super(new Code("lot-failed"));
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    if (!lot.is(State.FAILED, batch.record().day())) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(
                code(),
                entry.lotPlace(),
                "lot " + lot.number() + " of " + lot.ingredient() + " failed its inspection")
            .seeing("inspection written", lot.judged());
    return Optional.of(
        (lot.remark().isEmpty() ? finding : finding.noting("what was seen: " + lot.remark()))
            .helping(held(batch)));
  }
}
