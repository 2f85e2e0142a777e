package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Batches that hold themselves, through whatever they were made of: one finding for each ring, at
 * the line that names what was made last of it, which is the likeliest slip.
 */
final class BatchInItself {
  static final Code CODE = new Code("batch-in-itself");

  private static final int SHOWN = 4;

  private final List<BatchRecord> records;
  private final Map<String, Integer> places = new HashMap<>();

  BatchInItself(FeedTables tables) {
    this.records = List.copyOf(tables.batches().values());
    for (int i = 0; i < records.size(); i++) {
      places.put(records.get(i).number(), i);
    }
  }

  /** One batch that names another of its ring. */
  private record Named(BatchRecord by, BatchRecord other, Entry entry) {}

  void look(Consumer<Finding> out) {
    int[][] leads = new int[records.size()][];
    for (int i = 0; i < leads.length; i++) {
      leads[i] =
          records.get(i).entries().stream()
              .filter(entry -> places.containsKey(entry.lot()))
              .mapToInt(entry -> places.getOrDefault(entry.lot(), 0))
              .toArray();
    }
    Circles circles = new Circles(leads);
    Map<Integer, List<Named>> rings = new LinkedHashMap<>();
    for (int i = 0; i < leads.length; i++) {
      int group = circles.group(i);
      for (Named named : named(records.get(i))) {
        if (circles.group(places.getOrDefault(named.other().number(), 0)) == group) {
          rings.computeIfAbsent(group, none -> new ArrayList<>()).add(named);
        }
      }
    }
    rings.values().forEach(ring -> likeliest(ring).map(it -> told(it, ring)).ifPresent(out));
  }

  private List<Named> named(BatchRecord record) {
    List<Named> named = new ArrayList<>();
    for (Entry entry : record.entries()) {
      Integer place = places.get(entry.lot());
      if (place != null) {
        named.add(new Named(record, records.get(place), entry));
      }
    }
    return named;
  }

  /** The one that takes what was made longest after it. */
  private static Optional<Named> likeliest(List<Named> ring) {
    return ring.stream().reduce((one, two) -> later(two) > later(one) ? two : one);
  }

  private static long later(Named named) {
    return named.other().day().toEpochDay() - named.by().day().toEpochDay();
  }

  private static Finding told(Named at, List<Named> ring) {
    List<String> numbers = ring.stream().map(one -> one.by().number()).distinct().toList();
    boolean itself = at.by().number().equals(at.other().number());
    String shown = String.join(", ", numbers.subList(0, Math.min(SHOWN, numbers.size())));
    Finding finding =
        Finding.error(
            CODE,
            at.entry().lotPlace(),
            itself
                ? at.by().number() + " is made of itself"
                : at.by().number()
                    + " takes "
                    + at.other().number()
                    + ", which is made of "
                    + at.by().number());
    return (itself
            ? finding
            : finding.noting(
                "in the ring are "
                    + shown
                    + (numbers.size() > SHOWN ? " and " + (numbers.size() - SHOWN) + " more" : "")))
        .helping(
            at.other().day().isAfter(at.by().day())
                ? at.other().number() + " was made later: name the batch that was there"
                : "look on the bag for the batch that was taken, and fix the number");
  }
}
