package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A lot at which nobody has looked. */
final class LotNotInspected extends LotRule {
  LotNotInspected() {
    super(new Code("lot-not-inspected"));
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    return lot.inspection().isPresent()
        ? Optional.empty()
        : Optional.of(
            Finding.warning(
                    code(),
                    entry.lotPlace(),
                    "lot " + lot.number() + " of " + lot.ingredient() + " was not inspected")
                .seeing("lot written", lot.declared())
                .helping("look for mould, smell, pests and heat, and write inspection: passed"));
  }
}
