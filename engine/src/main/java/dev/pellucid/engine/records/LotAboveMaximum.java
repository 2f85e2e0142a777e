package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.records.LotsOverMaxima.Found;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A batch that names a lot over the legal maximum of its kind of material. */
final class LotAboveMaximum extends LotRule {
  static final Code CODE = new Code("lot-above-maximum");

  LotAboveMaximum() {
    super(CODE);
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    Optional<Found> found = batch.overMaxima().law(lot);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(
                CODE,
                entry.lotPlace(),
                of(lot, entry) + " may not be used: it holds " + found.get().over().words())
            .seeing("measured", found.get().at().place())
            .helping(held(batch)));
  }

  @Override
  boolean looksIntoBins() {
    return true;
  }
}
