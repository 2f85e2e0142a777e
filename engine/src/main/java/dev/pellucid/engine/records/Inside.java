package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.BegunWith;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The lots that can be in a batch, its premixes, rework and part bags opened, by what records name.
 */
public final class Inside {
  private final FeedTables tables;
  private final Bins bins;

  public Inside(FeedTables tables) {
    this.tables = tables;
    this.bins = new Bins(tables);
  }

  /**
   * A lot that can be in it.
   *
   * @param codes of what is between the lot and the batch, the batch left out
   * @param taken the day on which it was weighed
   * @param entry the line of the batch that brings it; absent for a part bag
   */
  public record Held(
      Lot lot, Set<String> codes, LocalDate taken, Optional<BatchRecord.Entry> entry) {
    public Held {
      codes = Collections.unmodifiableSortedSet(new TreeSet<>(codes));
    }

    boolean isDirect() {
      return codes.isEmpty();
    }
  }

  /** In the order of the record. */
  public List<Held> of(BatchRecord batch) {
    List<Held> held = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    seen.add(batch.number());
    for (BatchRecord.Entry entry : batch.entries()) {
      add(batch, entry, Set.of(), Optional.of(entry), seen, held);
    }
    batch
        .bags()
        .flatMap(Bags::begunWith)
        .map(BegunWith::batch)
        .ifPresent(number -> open(number, Set.of(), Optional.empty(), seen, held));
    return held;
  }

  private void add(
      BatchRecord in,
      BatchRecord.Entry entry,
      Set<String> codes,
      Optional<BatchRecord.Entry> top,
      Set<String> seen,
      List<Held> held) {
    for (Lot lot : bins.lots(entry, in.day())) {
      held.add(new Held(lot, codes, in.day(), top));
    }
    open(entry.lot(), codes, top, seen, held);
  }

  private void open(
      String number,
      Set<String> codes,
      Optional<BatchRecord.Entry> top,
      Set<String> seen,
      List<Held> held) {
    BatchRecord batch = tables.batches().get(number);
    if (batch == null || !seen.add(number)) {
      return;
    }
    Set<String> through = new HashSet<>(codes);
    through.add(batch.code());
    for (BatchRecord.Entry entry : batch.entries()) {
      add(batch, entry, through, top, seen, held);
    }
  }

  /**
   * A batch that can be in it.
   *
   * @param taken the day on which it was weighed
   * @param entry the line of the batch that brings it; absent for a part bag
   */
  public record Through(BatchRecord batch, LocalDate taken, Optional<BatchRecord.Entry> entry) {}

  /** Those that it names, and those that these name in turn. */
  public List<Through> batches(BatchRecord batch) {
    List<Through> through = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    seen.add(batch.number());
    for (BatchRecord.Entry entry : batch.entries()) {
      through(entry.lot(), batch.day(), Optional.of(entry), seen, through);
    }
    batch
        .bags()
        .flatMap(Bags::begunWith)
        .map(BegunWith::batch)
        .ifPresent(number -> through(number, batch.day(), Optional.empty(), seen, through));
    return through;
  }

  private void through(
      String number,
      LocalDate taken,
      Optional<BatchRecord.Entry> top,
      Set<String> seen,
      List<Through> through) {
    BatchRecord batch = tables.batches().get(number);
    if (batch == null || !seen.add(number)) {
      return;
    }
    through.add(new Through(batch, taken, top));
    for (BatchRecord.Entry entry : batch.entries()) {
      through(entry.lot(), batch.day(), top, seen, through);
    }
  }

  /** Whether nothing may be taken of a lot by what was decided last. */
  public static Optional<LotState> stopped(Lot lot, LocalDate known) {
    return lot.state(known)
        .filter(
            told ->
                switch (told.state()) {
                  case ON_HOLD, FAILED, RETURNED -> true;
                  case WAITING, PASSED, PASSED_FOR -> false;
                });
  }

  /** Why a batch that was made may not go into something for the lots that it holds. */
  Optional<String> hindrance(BatchRecord batch, GoesInto into) {
    for (Held held : of(batch)) {
      Optional<String> why = hindrance(batch, held, into);
      if (why.isPresent()) {
        return Optional.of("holds lot " + held.lot().number() + ", which " + why.get());
      }
    }
    return Optional.empty();
  }

  private static Optional<String> hindrance(BatchRecord batch, Held held, GoesInto into) {
    Optional<LotState> stopped = stopped(held.lot(), into.known());
    if (stopped.isPresent()) {
      return isDecided(batch, stopped.get().day())
          ? Optional.empty()
          : Passing.hindrance(held.lot(), into);
    }
    Set<String> through = new HashSet<>(held.codes());
    through.add(batch.code());
    return Passing.hindranceThrough(held.lot(), through, into);
  }

  /** Whether somebody has let a batch go since a day, in the knowledge of what is wrong. */
  public static boolean isDecided(BatchRecord batch, LocalDate since) {
    return batch.since().decisions().stream()
        .anyMatch(
            one -> one.decision() == Decision.RELEASED && !one.signed().day().isBefore(since));
  }
}
