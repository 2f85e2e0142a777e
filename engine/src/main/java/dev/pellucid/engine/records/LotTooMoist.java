package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/** A lot that is as moist as its ingredient must not be. */
final class LotTooMoist extends LotRule {
  LotTooMoist() {
    super(new Code("lot-too-moist"));
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    Optional<Content> moisture = lot.measured(Nutrients.MOISTURE);
    OptionalDouble most =
        ask.material()
            .opened(single -> single.ingredient().maxMoisture(), parts -> OptionalDouble.empty());
    if (moisture.isEmpty() || most.isEmpty() || moisture.get().high() < most.getAsDouble()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(
                code(),
                entry.lotPlace(),
                "lot "
                    + lot.number()
                    + " holds "
                    + moisture.get().asWritten()
                    + " of moisture, "
                    + lot.ingredient()
                    + " is used below "
                    + Figures.plain(most.getAsDouble(), Unit.PERCENT))
            .seeing("moisture written", moisture.get().place())
            .helping("moulds grow in it: " + held(batch)));
  }
}
