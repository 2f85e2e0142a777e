package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
import dev.pellucid.engine.records.PutInto.Brought;
import dev.pellucid.engine.records.PutInto.How;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The lots and batches that can be in a batch, by what records name: through its lines, part bags
 * opened, and fines and flushes that were put into it.
 */
public final class Inside {
  private final FeedTables tables;
  private final Bins bins;
  private final PutInto put;
  private final LocalDate today;

  /**
   * @param today that a line was cleaned later does not count yet
   */
  public Inside(FeedTables tables, LocalDate today) {
    this(tables, new PutInto(tables.batches().values()), today);
  }

  Inside(FeedTables tables, PutInto put, LocalDate today) {
    this.tables = tables;
    this.bins = new Bins(tables);
    this.put = put;
    this.today = today;
  }

  /**
   * What brings something into the batch: a line of it, or what is put in beside its lines.
   *
   * @param entry the line; absent where it is none
   * @param brought what is put in; absent where it is a line
   */
  public record Way(Optional<Entry> entry, Optional<Brought> brought) {
    private static Way of(Entry entry) {
      return new Way(Optional.of(entry), Optional.empty());
    }

    private static Way of(Brought brought) {
      return new Way(Optional.empty(), Optional.of(brought));
    }

    /** Whether it was in the mixer, so that some of it may be left behind on the line. */
    public boolean isMixedIn() {
      return brought.filter(it -> it.how() != How.FINES).isEmpty();
    }

    /** Whether it is not sure to be in the batch. */
    public boolean isPerhaps() {
      return isFlush() || entry.filter(Bins::isFromBin).isPresent();
    }

    boolean isFlush() {
      return brought.filter(it -> it.how() == How.FLUSH).isPresent();
    }

    /** Where the record of a batch tells it; the batch itself where another record does. */
    Span place(BatchRecord batch) {
      return entry
          .map(Entry::lotPlace)
          .or(() -> brought.filter(it -> it.by().equals(batch)).map(Brought::place))
          .orElse(batch.declared());
    }
  }

  /**
   * A lot that can be in it.
   *
   * @param codes of what is between the lot and the batch, the batch left out
   * @param taken the day on which it was weighed
   * @param way by which it came into the batch
   */
  public record Held(Lot lot, Set<String> codes, LocalDate taken, Way way) {
    public Held {
      codes = Collections.unmodifiableSortedSet(new TreeSet<>(codes));
    }

    boolean isDirect() {
      return codes.isEmpty();
    }
  }

  /** In the order of the record; what is put in beside its lines comes last. */
  public List<Held> of(BatchRecord batch) {
    List<Held> held = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    seen.add(batch.number());
    for (Entry entry : batch.entries()) {
      add(batch, entry, Set.of(), Way.of(entry), seen, held);
    }
    for (Brought brought : put.into(batch, today)) {
      open(brought.of().number(), Set.of(), Way.of(brought), seen, held);
    }
    return held;
  }

  private void add(
      BatchRecord in, Entry entry, Set<String> codes, Way way, Set<String> seen, List<Held> held) {
    for (Lot lot : bins.lots(entry, in.day())) {
      held.add(new Held(lot, codes, in.day(), way));
    }
    open(entry.lot(), codes, way, seen, held);
  }

  private void open(String number, Set<String> codes, Way way, Set<String> seen, List<Held> held) {
    BatchRecord batch = tables.batches().get(number);
    if (batch == null || !seen.add(number)) {
      return;
    }
    Set<String> through = new HashSet<>(codes);
    through.add(batch.code());
    for (Entry entry : batch.entries()) {
      add(batch, entry, through, way, seen, held);
    }
    for (Brought fines : put.finesInto(batch)) {
      open(fines.of().number(), through, way, seen, held);
    }
  }

  /**
   * A batch that can be in it.
   *
   * @param taken the day on which it was weighed
   * @param way by which it came into the batch
   */
  public record Through(BatchRecord batch, LocalDate taken, Way way) {}

  /** Those that it names, and those that these name in turn. */
  public List<Through> batches(BatchRecord batch) {
    List<Through> through = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    seen.add(batch.number());
    for (Entry entry : batch.entries()) {
      through(entry.lot(), batch.day(), Way.of(entry), seen, through);
    }
    for (Brought brought : put.into(batch, today)) {
      through(brought.of().number(), batch.day(), Way.of(brought), seen, through);
    }
    return through;
  }

  private void through(
      String number, LocalDate taken, Way way, Set<String> seen, List<Through> through) {
    BatchRecord batch = tables.batches().get(number);
    if (batch == null || !seen.add(number)) {
      return;
    }
    through.add(new Through(batch, taken, way));
    for (Entry entry : batch.entries()) {
      through(entry.lot(), batch.day(), way, seen, through);
    }
    for (Brought fines : put.finesInto(batch)) {
      through(fines.of().number(), batch.day(), way, seen, through);
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

  /**
   * Why a batch that was made may not go into something for the lots that it holds. What a flush
   * took along is no lot that it was passed for, or not, and only stops it where it is stopped.
   */
  Optional<String> hindrance(BatchRecord batch, GoesInto into) {
    for (Held held : of(batch)) {
      boolean rest = held.way().isFlush() && stopped(held.lot(), into.known()).isEmpty();
      Optional<String> why = rest ? Optional.empty() : hindrance(batch, held, into);
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
