package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.records.ByLetters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What records tell of other batches than their own: whose fines and which flushes were put into a
 * batch.
 */
final class PutInto {
  private final Set<String> batches = new HashSet<>();
  private final Map<String, List<BatchRecord>> fines = new HashMap<>();
  private final Map<String, List<BatchRecord>> flushes = new HashMap<>();

  PutInto(Collection<BatchRecord> records) {
    records.forEach(record -> batches.add(ByLetters.number(record.number())));
    for (BatchRecord record : records) {
      fines(record).ifPresent(to -> add(fines, to, record));
      flush(record).ifPresent(to -> add(flushes, to, record));
    }
  }

  private static void add(Map<String, List<BatchRecord>> of, String to, BatchRecord record) {
    of.computeIfAbsent(to, none -> new ArrayList<>()).add(record);
  }

  /** The batch that the fines of another were put into, where the record names one. */
  Optional<String> fines(BatchRecord record) {
    return record
        .fines()
        .map(fines -> ByLetters.number(fines.to()))
        .filter(to -> batches.contains(to) && !to.equals(ByLetters.number(record.number())));
  }

  /** The batch that a flush before another was put into, where the record names one. */
  Optional<String> flush(BatchRecord record) {
    return record.flushed().map(flush -> ByLetters.number(flush.to())).filter(batches::contains);
  }

  /** The records of the batches whose fines were put into one. */
  List<BatchRecord> finesIn(String key) {
    return fines.getOrDefault(key, List.of());
  }

  /** The records of the batches before which a flush was run that was put into one. */
  List<BatchRecord> flushesIn(String key) {
    return flushes.getOrDefault(key, List.of());
  }
}
