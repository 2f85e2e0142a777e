package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Fines;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What comes into a batch and is no line of it: a part bag that it filled up; and, as records of
 * other batches tell it, their fines, and flushes that were run before them.
 */
public final class PutInto {
  private final Map<String, BatchRecord> batches = new HashMap<>();
  private final Map<String, List<BatchRecord>> fines = new HashMap<>();
  private final Map<String, List<BatchRecord>> flushes = new HashMap<>();

  public PutInto(Collection<BatchRecord> records) {
    records.forEach(record -> batches.put(ByLetters.number(record.number()), record));
    for (BatchRecord record : records) {
      fines(record).ifPresent(to -> add(fines, to, record));
      flush(record).ifPresent(to -> add(flushes, to, record));
    }
  }

  private static void add(Map<String, List<BatchRecord>> of, String to, BatchRecord record) {
    of.computeIfAbsent(to, none -> new ArrayList<>()).add(record);
  }

  /** How something of one batch comes into another that does not weigh it. */
  public enum How {
    PART_BAG,
    FINES,
    /** What a batch left behind on the line, with the flush that was run after it. */
    FLUSH
  }

  /**
   * Something of a batch that is put into another.
   *
   * @param by the record that tells it
   * @param place where it does
   */
  public record Brought(BatchRecord of, How how, BatchRecord by, Span place) {
    /** The key that tells it, for people. */
    String key() {
      return switch (how) {
        case PART_BAG -> "begun-with";
        case FINES -> "fines";
        case FLUSH -> "flush";
      };
    }
  }

  /**
   * What is put into a batch, as far as the numbers of batches tell it. A flush that was run after
   * the line was cleaned takes nothing along.
   *
   * @param today a cleaning that is still to come does not count
   */
  List<Brought> into(BatchRecord batch, LocalDate today) {
    String key = ByLetters.number(batch.number());
    List<Brought> all = new ArrayList<>();
    batch
        .bags()
        .flatMap(Bags::begunWith)
        .ifPresent(
            bag ->
                batch(bag.batch())
                    .ifPresent(of -> all.add(new Brought(of, How.PART_BAG, batch, bag.place()))));
    all.addAll(finesInto(batch));
    for (BatchRecord by : flushesIn(key)) {
      Span place = by.flushed().map(Flushed::toPlace).orElse(by.declared());
      by.after()
          .flatMap(it -> batch(it.thing()))
          .filter(of -> !by.isCleanedAfter(of, today))
          .ifPresent(of -> all.add(new Brought(of, How.FLUSH, by, place)));
    }
    return all;
  }

  /** The fines of others in a batch. */
  List<Brought> finesInto(BatchRecord batch) {
    return finesIn(ByLetters.number(batch.number())).stream()
        .map(
            of ->
                new Brought(
                    of, How.FINES, of, of.fines().map(Fines::toPlace).orElse(of.declared())))
        .toList();
  }

  private Optional<BatchRecord> batch(String number) {
    return Optional.ofNullable(batches.get(ByLetters.number(number)));
  }

  /** The batch that the fines of another were put into, where the record names one. */
  public Optional<String> fines(BatchRecord record) {
    return record
        .fines()
        .map(fines -> ByLetters.number(fines.to()))
        .filter(to -> batches.containsKey(to) && !to.equals(ByLetters.number(record.number())));
  }

  /** The batch that a flush before another was put into, where the record names one. */
  public Optional<String> flush(BatchRecord record) {
    return record.flushed().map(flush -> ByLetters.number(flush.to())).filter(batches::containsKey);
  }

  /** The records of the batches whose fines were put into one. */
  public List<BatchRecord> finesIn(String key) {
    return fines.getOrDefault(key, List.of());
  }

  /** The records of the batches before which a flush was run that was put into one. */
  public List<BatchRecord> flushesIn(String key) {
    return flushes.getOrDefault(key, List.of());
  }
}
