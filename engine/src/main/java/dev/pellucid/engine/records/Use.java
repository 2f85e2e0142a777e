package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;

/**
 * What a batch takes of a lot.
 *
 * @param lot its number, or that of a batch of a premix; empty where only a bin is told
 * @param bin what it was taken from, where no lot is told
 * @param batch the number of the batch
 * @param share what the recipe asks of it, kg per kg of the batch, whatever was weighed
 * @param made whether it was weighed; else it is planned
 * @param place where the record names the lot
 */
public record Use(
    String lot,
    String bin,
    String batch,
    LocalDate day,
    double kg,
    double share,
    boolean made,
    Span place) {
  /** What a record takes, whatever it is held against. */
  public static List<Use> of(BatchRecord record) {
    return record.entries().stream()
        .filter(Use::isOfStore)
        .map(entry -> of(record, entry, entry.kg().orElse(0), entry.kg().orElse(0) / record.kg()))
        .toList();
  }

  /** What a batch takes for the lines that it was ordered by. */
  static List<Use> of(MadeBatch batch) {
    return batch.used().stream()
        .filter(used -> isOfStore(used.entry()))
        .map(
            used ->
                of(batch.record(), used.entry(), used.kg(), used.ask().kg() / batch.order().kg()))
        .toList();
  }

  private static boolean isOfStore(Entry entry) {
    return !entry.lot().isEmpty() || Bins.isFromBin(entry);
  }

  private static Use of(BatchRecord record, Entry entry, double kg, double share) {
    return new Use(
        entry.lot(),
        Bins.isFromBin(entry) ? entry.bin() : "",
        record.number(),
        record.day(),
        kg,
        share,
        record.isMade(),
        entry.lotPlace());
  }

  boolean isFromBin() {
    return lot.isEmpty();
  }
}
