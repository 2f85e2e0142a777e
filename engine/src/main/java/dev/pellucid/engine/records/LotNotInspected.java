package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A lot at which nobody has looked. */
final class LotNotInspected extends LotRule {
  static final Code CODE = new Code("lot-not-inspected");
  private static final String LOOK =
      "look for mould, smell, pests and heat, and write inspection: passed";

  LotNotInspected() {
    super(CODE);
  }

  /** Said at the lot itself, where others of the folder are inspected. */
  static Finding atLot(Lot lot) {
    return Finding.warning(
            CODE,
            lot.judged(),
            "lot "
                + lot.number()
                + " of "
                + lot.ingredient()
                + " has no inspection, the others have one")
        .helping(LOOK);
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    return !lot.states().isEmpty() || LotsTogether.areInspected(batch.tables(), lot)
        ? Optional.empty()
        : Optional.of(
            Finding.warning(
                    code(),
                    entry.lotPlace(),
                    "lot " + lot.number() + " of " + lot.ingredient() + " was not inspected")
                .seeing("lot written", lot.declared())
                .helping(LOOK));
  }
}
