package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.BegunWith;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.Fines;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.BatchTarget;
import dev.pellucid.engine.records.Bins;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.records.MadeBatch;
import dev.pellucid.engine.records.PutInto;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Open;
import dev.pellucid.engine.trace.Page.Taken;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Trace.Reason;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A record made a page of a ledger. What one record tells twice, or two tell of the same feed, is
 * taken once: fines that the batch which got them weighed itself are part of that weighing.
 */
final class Pages {
  private static final double CLOSE = 1e-12;

  private final Names names;
  private final PutInto put;
  private final BatchRecord record;
  private final Optional<BatchTarget> order;
  private final List<Taken> taken = new ArrayList<>();
  private final List<Drawn> drawn = new ArrayList<>();
  private final List<Open> open = new ArrayList<>();

  /** What a page has to know of the rest of the folder. */
  interface Names {
    /** What the lots of a line are of. */
    String kind(String line);

    Optional<Lot> lot(String key);

    Optional<BatchRecord> batch(String key);

    /** Lines that a recipe has and a record does not tell. */
    List<String> leftOut(BatchRecord record);

    /** The lines of a premix or recipe; none for an ingredient. */
    List<String> madeOf(String kind);

    /** Whether a batch of a premix or recipe is recorded, of a day or before it. */
    boolean isRecorded(String kind, LocalDate day);

    Bins bins();

    DrawnFrom books();
  }

  private Pages(Names names, PutInto put, BatchRecord record, Optional<BatchTarget> order) {
    this.names = names;
    this.put = put;
    this.record = record;
    this.order = order;
  }

  /**
   * @param order what a batch that is still planned is to be made of, where it can be reckoned
   */
  static Page of(Names names, PutInto put, BatchRecord record, Optional<BatchTarget> order) {
    return new Pages(names, put, record, order).page();
  }

  private Page page() {
    String key = ByLetters.number(record.number());
    record.entries().forEach(this::entry);
    for (String line : names.leftOut(record)) {
      open(line, Reason.LEFT_OUT, "", OptionalDouble.empty());
    }
    record.flushed().ifPresent(this::flushedBefore);
    put.flushesIn(key)
        .forEach(from -> from.flushed().ifPresent(flush -> flushPutIn(from.day(), flush)));
    put.finesIn(key).forEach(from -> from.fines().ifPresent(fines -> finesPutIn(from, fines)));
    record.bags().flatMap(BatchRecord.Bags::begunWith).ifPresent(this::partBag);
    List.copyOf(open).forEach(this::unrecorded);
    return new Page(key, record, taken, drawn, open, made());
  }

  private void open(String line, Reason reason, String named, OptionalDouble kg) {
    open.add(new Open(names.kind(line), line, reason, named, kg));
  }

  private void entry(Entry entry) {
    String lot = entry.written().strip();
    OptionalDouble kg = kg(entry);
    if (!lot.isEmpty()) {
      slip(ByLetters.number(lot), entry.line()).ifPresent(why -> open(entry.line(), why, lot, kg));
    } else if (entry.bin().isBlank()) {
      open(entry.line(), Reason.NOT_TOLD, "", kg);
    }
    from(
        record.day(),
        entry.line(),
        ByLetters.number(lot),
        entry.bin().strip(),
        kindOf(entry, ByLetters.number(lot)),
        kg,
        entry.kg().isPresent());
  }

  /**
   * Which batch of a premix was taken is not told, and not each of them has a record: what the
   * premix is made of may be in it. Rework is taken for one of those that have a record, where
   * there are any.
   */
  private void unrecorded(Open told) {
    boolean recorded = Ledger.isRework(told.line()) && names.isRecorded(told.kind(), record.day());
    if (!told.flush() && !recorded) {
      madeOf(told, told.kind(), new HashSet<>());
    }
  }

  private void madeOf(Open told, String kind, Set<String> seen) {
    if (seen.add(kind)) {
      for (String line : names.madeOf(kind)) {
        String of = names.kind(line);
        open.add(new Open(of, told.line(), Reason.NO_RECORD, "", OptionalDouble.empty()));
        madeOf(told, of, seen);
      }
    }
  }

  private Kind kindOf(Entry entry, String key) {
    if (Ledger.isRework(entry.line())) {
      return Kind.REWORK;
    }
    return names.batch(key).isPresent() ? Kind.PREMIX : Kind.WEIGHED;
  }

  /** What is wrong with a number, so that the line may be of another lot. */
  private Optional<Reason> slip(String key, String line) {
    Optional<Lot> lot = names.lot(key);
    Optional<BatchRecord> batch = names.batch(key);
    if (lot.isEmpty() && batch.isEmpty()) {
      return Optional.of(Reason.NO_SUCH_LOT);
    }
    String kind = names.kind(line);
    boolean fits =
        lot.filter(it -> it.ingredient().equals(kind)).isPresent()
            || batch.filter(it -> it.code().equals(kind) && !it.equals(record)).isPresent();
    if (!fits) {
      return Optional.of(Reason.LOT_OF_ANOTHER);
    }
    boolean there =
        lot.filter(this::isThere).isPresent()
            || batch.filter(it -> !it.day().isAfter(record.day())).isPresent();
    return there ? Optional.empty() : Optional.of(Reason.NOT_THERE);
  }

  /** Whether it had come, and had not gone from a bin that was emptied. */
  private boolean isThere(Lot lot) {
    return !lot.received().isAfter(record.day()) && names.bins().isThere(lot, record.day());
  }

  /**
   * From a lot, or from a bin, or from a lot that lay in a bin. A bin proves something only where
   * one lot could be in it, of what the line asks for, and the books can have had it.
   *
   * @param told whether the kg are in the record
   */
  private void from(
      LocalDate day,
      String line,
      String lot,
      String bin,
      Kind kind,
      OptionalDouble kg,
      boolean told) {
    List<String> bins = bins(lot, bin);
    Set<String> could = could(lot, bins, day);
    Optional<Reason> wrong =
        lot.isEmpty() && !bins.isEmpty() ? wrong(could, line, day, kg, told) : Optional.empty();
    if (could.size() == 1 && wrong.isEmpty()) {
      taken.add(new Taken(could.iterator().next(), line, shown(bins), kind, Kilograms.of(kg)));
    } else if (!could.isEmpty()) {
      Kind as = kind == Kind.FLUSH ? kind : Kind.SAME_BIN;
      drawn.add(new Drawn(line, day, bins, lot, as, kg));
    }
    wrong.ifPresent(why -> open(line, why, bin, kg));
  }

  /** Why a line may be of a lot that never lay in its bin. */
  private Optional<Reason> wrong(
      Set<String> could, String line, LocalDate day, OptionalDouble kg, boolean told) {
    List<Lot> right =
        could.stream()
            .filter(one -> isOf(one, line))
            .flatMap(one -> names.lot(one).stream())
            .toList();
    if (right.isEmpty()) {
      return Optional.of(Reason.BIN_EMPTY);
    }
    return names.books().isEnough(right, day, kg, told)
        ? Optional.empty()
        : Optional.of(Reason.BIN_SHORT);
  }

  private List<String> bins(String lot, String bin) {
    return Stream.concat(
            Stream.of(bin).filter(name -> !name.isEmpty()),
            names.lot(lot).flatMap(Lot::bin).stream())
        .map(Bin::key)
        .distinct()
        .toList();
  }

  private Set<String> could(String lot, List<String> bins, LocalDate day) {
    Set<String> could = new LinkedHashSet<>();
    if (!lot.isEmpty()) {
      could.add(lot);
    }
    bins.forEach(one -> could.addAll(names.bins().lots(one, day)));
    return could;
  }

  private String shown(List<String> bins) {
    return bins.isEmpty() ? "" : names.bins().written(bins.get(0));
  }

  private boolean isOf(String lot, String line) {
    return names.lot(lot).filter(it -> it.ingredient().equals(names.kind(line))).isPresent();
  }

  /** What was run through the line before the batch may be in it. */
  private void flushedBefore(Flushed flush) {
    OptionalDouble kg = OptionalDouble.of(flush.kg());
    if (flush.lot().isEmpty()) {
      open(flush.with(), Reason.FLUSHED, "", kg);
    } else {
      String lot = ByLetters.number(flush.lot());
      slip(lot, flush.with()).ifPresent(why -> open(flush.with(), Reason.FLUSHED, flush.lot(), kg));
      drawn.add(new Drawn(flush.with(), record.day(), bins(lot, ""), lot, Kind.NEXT_ON_LINE, kg));
    }
  }

  private void flushPutIn(LocalDate day, Flushed flush) {
    OptionalDouble kg = OptionalDouble.of(flush.kg());
    if (flush.lot().isEmpty()) {
      open(flush.with(), Reason.FLUSH_INTO, "", kg);
    } else {
      String lot = ByLetters.number(flush.lot());
      slip(lot, flush.with())
          .ifPresent(why -> open(flush.with(), Reason.FLUSH_INTO, flush.lot(), kg));
      from(day, flush.with(), lot, "", Kind.FLUSH, kg, true);
    }
  }

  private void finesPutIn(BatchRecord from, Fines fines) {
    String key = ByLetters.number(from.number());
    boolean told = taken.stream().anyMatch(one -> one.key().equals(key) && !one.kg().whole());
    double weighed =
        taken.stream().filter(one -> one.key().equals(key)).mapToDouble(it -> it.kg().told()).sum();
    if (!told && fines.kg() > weighed + CLOSE) {
      Kilograms kg = new Kilograms(fines.kg() - weighed, true);
      taken.add(new Taken(key, "", "", Kind.FINES, kg));
    }
  }

  private void partBag(BegunWith begun) {
    Kilograms kg = new Kilograms(begun.kg(), true);
    taken.add(new Taken(ByLetters.number(begun.batch()), "", "", Kind.PART_BAG, kg));
  }

  /** What was weighed; while nothing is, an equal part of what the line asks for. */
  private OptionalDouble kg(Entry entry) {
    if (entry.kg().isPresent() || record.isMade()) {
      return entry.kg();
    }
    return order
        .flatMap(it -> it.named(entry.line()))
        .map(ask -> OptionalDouble.of(MadeBatch.kg(record, entry, ask)))
        .orElse(OptionalDouble.empty());
  }

  /** What reached the bags, or all that was weighed; as planned while nothing is weighed. */
  private OptionalDouble made() {
    if (!record.isMade()) {
      return OptionalDouble.of(record.kg());
    }
    OptionalDouble bagged =
        record.bagged().map(Located::thing).map(it -> OptionalDouble.of(own(it))).orElse(weighed());
    return bagged.stream().filter(kg -> kg > CLOSE).findFirst();
  }

  private double own(double bagged) {
    double begun =
        record.bags().flatMap(BatchRecord.Bags::begunWith).map(BegunWith::kg).orElse(0.0);
    return bagged - begun + record.fines().map(Fines::kg).orElse(0.0);
  }

  private OptionalDouble weighed() {
    boolean all =
        names.leftOut(record).isEmpty()
            && record.entries().stream().allMatch(entry -> entry.kg().isPresent());
    double entries = record.entries().stream().mapToDouble(entry -> entry.kg().orElse(0)).sum();
    double fines =
        taken.stream()
            .filter(one -> one.kind() == Kind.FINES)
            .mapToDouble(one -> one.kg().told())
            .sum();
    double flushes =
        put.flushesIn(ByLetters.number(record.number())).stream()
            .flatMap(one -> one.flushed().stream())
            .mapToDouble(Flushed::kg)
            .sum();
    return all ? OptionalDouble.of(entries + fines + flushes) : OptionalDouble.empty();
  }
}
