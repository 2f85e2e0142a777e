package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A lot that was past its last good day on the day of the batch. */
final class LotExpired extends LotRule {
  LotExpired() {
    super(new Code("lot-expired"));
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    return lot.bestBefore()
        .filter(last -> batch.record().day().isAfter(last))
        .map(
            last ->
                Finding.error(
                        code(),
                        entry.lotPlace(),
                        "lot "
                            + lot.number()
                            + " of "
                            + lot.ingredient()
                            + " was good until "
                            + last
                            + ", the batch is of "
                            + batch.record().day())
                    .seeing("best before written", lot.aged())
                    .helping(held(batch)));
  }
}
