package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.records.BatchTarget.TargetWeight;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A batch record beside what it was ordered by.
 *
 * @param made the feed of what was weighed from the lots that were named; absent for a premix
 * @param judgement how it stands with the limits of the recipe
 * @param overMaxima lots that are over what raw materials may hold
 * @param put what records tell to be put into others
 */
public record MadeBatch(
    BatchRecord record,
    BatchTarget order,
    FeedTables tables,
    Optional<Computation> made,
    Judgement judgement,
    LotsOverMaxima overMaxima,
    PutInto put,
    LocalDate day) {

  /** Weighed, or to be weighed: what of a lot goes into a line of the order. */
  public record Used(Entry entry, TargetWeight ask, double kg) {}

  /** Every entry that names a line of the order, in the order of the record. */
  public List<Used> used() {
    return used(record, order);
  }

  static List<Used> used(BatchRecord record, BatchTarget order) {
    return record.entries().stream()
        .flatMap(
            entry ->
                order
                    .named(entry.line())
                    .map(ask -> new Used(entry, ask, kg(record, entry, ask)))
                    .stream())
        .toList();
  }

  /** What was weighed; while nothing is, an equal part of what the line asks for. */
  public static double kg(BatchRecord record, Entry entry, TargetWeight ask) {
    OptionalDouble weighed = entry.kg();
    if (weighed.isPresent() || record.isMade()) {
      return weighed.orElse(0);
    }
    long sharing = record.entries().stream().filter(one -> one.line().equals(entry.line())).count();
    return ask.kg() / sharing;
  }

  /** The lot that an entry names, if it is a lot of an ingredient. */
  public Optional<Lot> lot(Entry entry) {
    return Optional.ofNullable(tables.lots().get(entry.lot()));
  }

  /** The lot that an entry names, or those that may be in the bin that it names. */
  List<Lot> lots(Entry entry) {
    return new Bins(tables).lots(entry, record.day());
  }

  Inside inside() {
    return new Inside(tables, put, day);
  }

  /** A batch that is made is held against what was decided by its day, else what is known now. */
  GoesInto goesInto() {
    return GoesInto.of(order, record.day(), record.isMade() ? record.day() : day);
  }

  /** The batch of a premix that an entry names. */
  public Optional<BatchRecord> batch(Entry entry) {
    return Optional.ofNullable(tables.batches().get(entry.lot()));
  }
}
