package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.HashSet;
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
      batch
          .lot(used.entry())
          .filter(lot -> seen.add(lot.number()))
          .flatMap(lot -> look(batch, lot, used.entry(), used.ask()))
          .ifPresent(out);
    }
  }

  abstract Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, TargetWeight ask);

  static String held(MadeBatch batch) {
    return batch.record().isMade()
        ? "hold the batch and the rest of the lot"
        : "take another lot, and set this one apart";
  }
}
