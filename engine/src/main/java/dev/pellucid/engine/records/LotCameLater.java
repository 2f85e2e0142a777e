package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A lot that came, or a batch that was made, after the batch that is said to have taken of it: a
 * slip in one of the days, or something else was used, which no recall would find.
 */
final class LotCameLater implements RecordRule {
  private static final Code CODE = new Code("lot-came-later");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    LocalDate day = batch.record().day();
    Set<String> seen = new HashSet<>();
    for (MadeBatch.Used used : batch.used()) {
      Entry entry = used.entry();
      Lot lot = batch.tables().lots().get(entry.lot());
      BatchRecord made = batch.tables().batches().get(entry.lot());
      if (lot != null && lot.received().isAfter(day) && seen.add(lot.number())) {
        String came = "lot " + lot.number() + " came on " + lot.received();
        out.accept(late(entry, came, day, lot.declared()));
      } else if (made != null && made.day().isAfter(day) && seen.add(made.number())) {
        out.accept(late(entry, made.number() + " is of " + made.day(), day, made.declared()));
      }
    }
  }

  private static Finding late(Entry entry, String came, LocalDate day, Span written) {
    return Finding.error(CODE, entry.lotPlace(), came + ", the batch is of " + day)
        .seeing("lot written", written)
        .helping("fix the day that is wrong, or the number of the lot");
  }
}
