package dev.pellucid.engine.records;

import dev.pellucid.engine.carryover.CarryOver;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.engine.data.SequenceRow.Flush;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Batches that say what was made on the same line before them, held against {@code
 * practice/sequence.yaml}. Only what a record itself names behind {@code after} is judged: serials
 * count the batches of one recipe, so that by them a feed only ever follows itself, and which
 * recipes of a day shared a line no number tells. Only the batch right before counts. A batch that
 * was rejected will not be fed and is left alone, a closed record too; what either left behind
 * counts for the next.
 */
final class Following {
  static final Code MISSING = new Code("flush-missing");
  static final Code TOO_SMALL = new Code("flush-too-small");
  static final Code NEVER = new Code("must-not-follow");

  /** So much more than is asked for is hardly run through on purpose; no source. */
  private static final double MUCH = 5;

  private final FeedTables tables;
  private final Set<String> neighbours = new HashSet<>();

  Following(FeedTables tables) {
    this.tables = tables;
    if (!tables.practice().sequence().isEmpty()) {
      tables.batches().values().forEach(record -> record.after().ifPresent(it -> add(record, it)));
    }
  }

  private void add(BatchRecord record, Located<String> before) {
    neighbours.add(record.number());
    neighbours.add(before.thing());
  }

  static List<Code> codes() {
    return List.of(MISSING, TOO_SMALL, NEVER);
  }

  /**
   * What a batch leaves behind, where another one follows it.
   *
   * @param feed asked for only then
   */
  Optional<CarryOver> left(BatchRecord record, Supplier<Optional<ComputedFeed>> feed) {
    return neighbours.contains(record.number())
        ? feed.get().map(it -> CarryOver.of(it, tables.practice().sequence()))
        : Optional.empty();
  }

  /**
   * Looks at all of them but those that are held against a state of their own; what could not be
   * reckoned is silent here.
   *
   * @param residues what each batch leaves behind, by its number
   */
  void check(Map<String, CarryOver> residues, Consumer<Finding> out) {
    for (BatchRecord record : tables.batches().values()) {
      if (!BatchRecordCheck.isOfItsOwnState(record)) {
        check(record, residues, out);
      }
    }
  }

  /** Looks at one of them. */
  void check(BatchRecord record, Map<String, CarryOver> residues, Consumer<Finding> out) {
    CarryOver here = residues.get(record.number());
    CarryOver before = record.after().map(it -> residues.get(it.thing())).orElse(null);
    if (here != null && before != null && !record.closed() && !record.isRejected()) {
      double asked = 0;
      for (SequenceRow row : tables.practice().sequence()) {
        if (here.minds(row)) {
          Optional<String> left = before.leaves(row);
          if (left.isPresent()) {
            asked = Math.max(asked, row.flush().map(Flush::kg).orElse(0.0));
            look(record, row, left.get()).ifPresent(out);
          }
        }
      }
      tooLarge(record, asked).ifPresent(out);
    }
  }

  /** Many times as much as the largest flush that any row asks for: a slip of the point. */
  private static Optional<Finding> tooLarge(BatchRecord record, double asked) {
    if (asked == 0 || record.flushed().isEmpty() || record.flushed().get().kg() <= MUCH * asked) {
      return Optional.empty();
    }
    Flushed flushed = record.flushed().get();
    return Optional.of(
        RecordFigureOff.told(
            flushed.place(),
            record.number()
                + " was flushed with "
                + Figures.plain(flushed.kg(), Unit.KG)
                + ", "
                + Figures.plain(asked, Unit.KG)
                + " are asked for",
            TenTimes.moved(flushed.kg(), asked, asked * MUCH)
                .map(meant -> Figures.plain(meant, Unit.KG))));
  }

  private Optional<Finding> look(BatchRecord record, SequenceRow row, String left) {
    Located<String> after = record.after().orElseThrow();
    String headline = record.number() + " follows " + after.thing() + ", which holds " + left;
    if (row.flush().isEmpty()) {
      return Optional.of(never(record, row, headline + ", and must not"));
    }
    Flush flush = row.flush().get();
    String kg = Figures.plain(flush.kg(), Unit.KG);
    if (record.flushed().isEmpty()) {
      return Optional.of(
          told(
                  MISSING,
                  record,
                  row,
                  after,
                  headline + ": a flush of " + kg + " is asked for, none is given")
              .helping(remedy(record, flush)));
    }
    Flushed flushed = record.flushed().get();
    Ingredient with = tables.ingredients().get(flushed.with());
    if (with != null && row.isLeftBy(with)) {
      String same = record.number() + " was flushed with " + flushed.with();
      return Optional.of(
          told(
                  MISSING,
                  record,
                  row,
                  new Located<>(after.thing(), flushed.place()),
                  same + ", which leaves behind what " + after.thing() + " left: " + left)
              .helping(remedy(record, flush)));
    }
    return Closeness.isBelow(flushed.kg(), flush.kg())
        ? Optional.of(tooSmall(record, row, flush, left))
        : Optional.empty();
  }

  private static Finding never(BatchRecord record, SequenceRow row, String headline) {
    Finding finding = told(NEVER, record, row, record.after().orElseThrow(), headline);
    return record.isMade()
        ? finding.helping(
            "hold the batch: a supervisor decides whether it is reworked, fed elsewhere or"
                + " rejected")
        : finding.helping("make another feed in between, one that may follow and may be followed");
  }

  private static Finding tooSmall(BatchRecord record, SequenceRow row, Flush flush, String left) {
    Flushed flushed = record.flushed().orElseThrow();
    Located<String> after = record.after().orElseThrow();
    String asked = Figures.plain(flush.kg(), Unit.KG);
    Finding finding =
        told(
            TOO_SMALL,
            record,
            row,
            new Located<>(after.thing(), flushed.place()),
            record.number()
                + " was flushed with "
                + Figures.plainBeside(flushed.kg(), flush.kg())
                + " kg after "
                + after.thing()
                + ", which holds "
                + left
                + ": "
                + asked
                + " are asked for");
    return record.isMade()
        ? finding.helping("if more was run through, fix the record; if not, hold the batch")
        : finding.helping("flush with " + asked + ", and write that");
  }

  /** A warning, and an error where the one must not follow the other and nobody is to decide. */
  private static Finding told(
      Code code, BatchRecord record, SequenceRow row, Located<String> after, String headline) {
    boolean error = code.equals(NEVER) && !record.isHeld();
    return Finding.of(code, error ? Severity.ERROR : Severity.WARNING, after.place(), headline)
        .seeing("sequence written", row.place())
        .noting("why: " + row.because() + " (" + row.source().reliability().inWords() + ")")
        .about(
            new About(
                row.left().words(), About.Side.NONE, List.of(record.number(), after.thing())));
  }

  /** What such a batch left behind goes into no feed, so the flush does not either. */
  private boolean isLeftByStopped(BatchRecord record) {
    return record.cleaned().isEmpty()
        && record
            .after()
            .flatMap(it -> Optional.ofNullable(tables.batches().get(it.thing())))
            .flatMap(BatchRecord::standing)
            .filter(HeldLater::isStop)
            .isPresent();
  }

  private String remedy(BatchRecord record, Flush flush) {
    String to = isLeftByStopped(record) ? "kept apart and marked, into no feed" : flush.to();
    String written =
        "write flushed: {quantity: "
            + Figures.plain(flush.kg(), Unit.KG)
            + ", with: "
            + flush.with().name()
            + ", to: \""
            + to.replace('"', '\'')
            + "\"}";
    return record.isMade()
        ? "if it was flushed, " + written + "; if not, hold the batch"
        : "plan the flush: " + written;
  }
}
