package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** A rule of each lot that a batch names, once for each lot. */
abstract class LotRule implements RecordRule {
  private final Code code;

  LotRule(Code code) {
    this.code = code;
  }

  @Override
  public final Code code() {
    return code;
  }

  @Override
  public final void look(MadeBatch batch, Consumer<Finding> out) {
    Set<String> seen = new HashSet<>();
    for (MadeBatch.Used used : batch.used()) {
      for (Lot lot : lots(batch, used.entry())) {
        if (seen.add(lot.number())) {
          look(batch, lot, used.entry(), used.ask()).ifPresent(out);
        }
      }
    }
  }

  private List<Lot> lots(MadeBatch batch, Entry entry) {
    return looksIntoBins() ? batch.lots(entry) : batch.lot(entry).stream().toList();
  }

  /** Whether it is asked too of lots that may be in a bin that is named in their place. */
  boolean looksIntoBins() {
    return false;
  }

  /** A lot, and whether it only may be in what was taken. */
  static String of(Lot lot, Entry entry) {
    return Bins.isFromBin(entry)
        ? "bin " + entry.bin() + " may hold lot " + lot.number() + ", which"
        : "lot " + lot.number() + " of " + lot.ingredient();
  }

  abstract Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask);

  static String held(MadeBatch batch) {
    return batch.record().isMade()
        ? "hold the batch and the rest of the lot"
        : "take another lot, and set this one apart";
  }
}
