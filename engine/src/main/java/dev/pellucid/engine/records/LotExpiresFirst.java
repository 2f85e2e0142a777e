package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.time.LocalDate;
import java.util.Optional;

/** A lot that is past its last good day before the feed it goes into is. */
final class LotExpiresFirst extends LotRule {
  private static final double HOURS_A_DAY = 24;

  LotExpiresFirst() {
    super(new Code("lot-expires-first"));
  }

  @Override
  Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask) {
    Optional<LocalDate> useBy = useBy(batch);
    Optional<LocalDate> last = lot.bestBefore();
    if (useBy.isEmpty() || last.isEmpty() || lot.isExpired(batch.record().day())) {
      return Optional.empty();
    }
    return useBy
        .filter(day -> day.isAfter(last.get()))
        .map(
            day ->
                Finding.warning(
                        code(),
                        entry.lotPlace(),
                        "lot "
                            + lot.number()
                            + " of "
                            + lot.ingredient()
                            + " is good until "
                            + last.get()
                            + ", the feed until "
                            + day)
                    .seeing("best before written", lot.aged())
                    .helping("take a fresher lot, or print the earlier day on the bags"));
  }

  private static Optional<LocalDate> useBy(MadeBatch batch) {
    return batch
        .order()
        .feed()
        .flatMap(feed -> feed.recipe().process().setting(Step.STORE, Property.SHELF_LIFE))
        .map(Setting::low)
        .map(hours -> batch.record().day().plusDays((long) Math.floor(hours / HOURS_A_DAY)));
  }
}
