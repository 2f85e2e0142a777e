package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/**
 * A lot that came after the batch was made: a slip in one of the days, or another sack was used.
 */
final class LotCameLater extends LotRule {
  LotCameLater() {
    super(new Code("lot-came-later"));
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    return lot.received().isAfter(batch.record().day())
        ? Optional.of(
            Finding.error(
                    code(),
                    entry.lotPlace(),
                    "lot "
                        + lot.number()
                        + " came on "
                        + lot.received()
                        + ", the batch is of "
                        + batch.record().day())
                .seeing("lot written", lot.declared())
                .helping("fix the day that is wrong, or the number of the lot"))
        : Optional.empty();
  }
}
