package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchNumber;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Where fines and flushes went: a text that looks like the number of a batch and is none leads a
 * recall nowhere. Words are let pass; they lead nowhere too, and say so.
 */
final class GoesToBatch {
  static final Code CODE = new Code("goes-to-no-batch");
  static final Code FLUSH = new Code("flush-lot-off");

  private static final Pattern NUMBER =
      Pattern.compile(".*[0-9]{4}-?[0-9]{1,2}-?[0-9]{1,2}.*", Pattern.DOTALL);

  private final FeedTables tables;
  private final Map<String, BatchRecord> byKey = new HashMap<>();

  GoesToBatch(FeedTables tables) {
    this.tables = tables;
    tables.batches().values().forEach(one -> byKey.put(ByLetters.number(one.number()), one));
  }

  void look(Consumer<Finding> out) {
    for (BatchRecord record : tables.batches().values()) {
      record
          .fines()
          .flatMap(it -> goes(record, "the fines of ", it.to(), it.toPlace(), false))
          .ifPresent(out);
      record
          .flushed()
          .flatMap(it -> goes(record, "the flush before ", it.to(), it.toPlace(), true))
          .ifPresent(out);
      record.flushed().flatMap(it -> lot(record, it)).ifPresent(out);
    }
  }

  private Optional<Finding> goes(
      BatchRecord record, String what, String to, Span place, boolean itself) {
    BatchRecord into = byKey.get(ByLetters.number(to));
    String went = what + record.number();
    if (into == null) {
      boolean number = NUMBER.matcher(to).matches() && !to.strip().contains(" ");
      return number ? Optional.of(none(record, went, to.strip(), place)) : Optional.empty();
    }
    if (into.number().equals(record.number()) && !itself) {
      return Optional.of(
          Finding.error(CODE, place, went + " cannot go into the batch itself")
              .helping("write the batch that they were put into, or say in words where they are"));
    }
    return into.day().isBefore(record.day())
        ? Optional.of(
            Finding.error(
                    CODE,
                    place,
                    went + " cannot go into " + into.number() + ", which was made before")
                .helping("write the batch that was made with it, on that day or later"))
        : Optional.empty();
  }

  private Finding none(BatchRecord record, String went, String to, Span place) {
    List<String> with =
        tables.batches().values().stream()
            .filter(one -> !one.day().isBefore(record.day()))
            .map(BatchRecord::number)
            .filter(one -> !one.equals(record.number()))
            .toList();
    Finding finding =
        Finding.error(CODE, place, went + " went to " + to + ", of which there is no record");
    return Meant.question(BatchNumber.near(to, with))
        .map(finding::helping)
        .orElse(finding)
        .helping(
            "plan that batch first: a record with size and weighed; or say in words where it went");
  }

  /** A flush cannot be of a lot that came later, nor of another ingredient. */
  private Optional<Finding> lot(BatchRecord record, Flushed flush) {
    Lot lot = tables.lots().get(flush.lot());
    if (lot == null) {
      return Optional.empty();
    }
    LocalDate day = lot.received();
    String wrong =
        day.isAfter(record.day())
            ? "came on " + day + ", the flush is of " + record.day()
            : lot.ingredient().equals(flush.with())
                ? ""
                : "is of " + lot.ingredient() + ", the flush is of " + flush.with();
    return wrong.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.error(FLUSH, flush.place(), "lot " + lot.number() + " " + wrong)
                .seeing("lot written", lot.declared())
                .helping("fix the number of the lot, or the day that is wrong"));
  }

  static List<Code> codes() {
    return List.of(CODE, FLUSH);
  }
}
