package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
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
    if (!lot.is(State.FAILED, batch.goesInto().known())) {
      return Optional.empty();
    }
    String because = lot.state(batch.goesInto().known()).map(LotState::because).orElse("");
    Finding finding =
        Finding.error(code(), entry.lotPlace(), of(lot, entry) + " failed its inspection")
            .seeing("inspection written", lot.judged());
    return Optional.of(
        (seen(because, lot).isEmpty()
                ? finding
                : finding.noting("what was seen: " + seen(because, lot)))
            .helping(held(batch)));
  }

  private static String seen(String because, Lot lot) {
    return because.isEmpty() ? lot.remark() : because;
  }

  @Override
  boolean looksIntoBins() {
    return true;
  }
}
