package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trace.Trace.Batch;
import dev.pellucid.engine.trace.Trace.Doubt;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Reason;
import dev.pellucid.engine.trace.Trace.Thing;
import dev.pellucid.engine.trace.Trace.Unknown;
import dev.pellucid.engine.trace.Trace.Way;
import java.util.ArrayList;
import java.util.List;

/** The words of a trace. */
final class TraceWords {
  private TraceWords() {}

  /**
   * {@code SE1-9042: lot of selenite-1 (...), 5 kg came on 2026-09-14, ...}.
   *
   * @param between what stands between what it is and how it came
   */
  static String facts(Thing thing, String between) {
    List<String> facts = new ArrayList<>();
    thing.lot().ifPresent(lot -> facts.add(lot(lot, between)));
    thing
        .batch()
        .ifPresent(
            batch ->
                facts.add(
                    "batch of " + batch.code() + " of " + batch.day() + ", " + became(batch)));
    if (facts.isEmpty()) {
      facts.add("named in batch records, given in no file of lots/");
    }
    return thing.number() + ": " + String.join("; and ", facts);
  }

  private static String lot(LotOf lot, String between) {
    return "lot of "
        + lot.ingredient()
        + " ("
        + lot.title()
        + ")"
        + between
        + Figures.plain(lot.kg())
        + " kg came on "
        + lot.received()
        + lot.supplier().map(it -> " from " + it + theirs(lot)).orElse(", supplier not given")
        + lot.bin().map(it -> ", in bin " + it).orElse("")
        + lot.bestBefore().map(day -> ", best before " + day).orElse("")
        + lot.inspection().map(it -> ", inspection " + it).orElse(", not inspected")
        + (lot.remark().isEmpty() ? "" : ", " + lot.remark());
  }

  /** By which numbers a supplier finds a lot; empty where none is told. */
  private static String theirs(LotOf lot) {
    List<String> numbers = new ArrayList<>();
    lot.supplierLot().ifPresent(it -> numbers.add("their lot " + it));
    lot.deliveryNote().ifPresent(it -> numbers.add("delivery note " + it));
    return numbers.isEmpty() ? "" : " (" + String.join(", ", numbers) + ")";
  }

  /** Who sold what a number is of, and by which numbers they find it. */
  static String supplier(Thing thing) {
    return thing
        .lot()
        .flatMap(lot -> lot.supplier().map(it -> it + theirs(lot)))
        .orElse("supplier not given");
  }

  /** What a lot or a batch is of, in a word. */
  static String kindOf(Thing thing) {
    return thing.lot().map(LotOf::ingredient).or(() -> thing.batch().map(Batch::code)).orElse("-");
  }

  /** What a number is of. */
  static String of(Thing thing) {
    return thing
        .batch()
        .map(batch -> batch.code() + ", " + became(batch))
        .or(() -> thing.lot().map(LotOf::ingredient))
        .orElse("given in no file of lots/");
  }

  static String became(Batch batch) {
    return (batch.became().equals("open") ? "not decided" : batch.became())
        + (batch.closed() ? ", closed" : "");
  }

  static String way(Way way) {
    return way.through().map(batch -> "with " + batch).orElse("weighed in itself");
  }

  /** Why a batch may hold a number. */
  static String why(Doubt doubt, String asked) {
    String of =
        String.join(", ", doubt.of()) + (doubt.more() > 0 ? " and " + doubt.more() + " more" : "");
    String may = of.equals(asked) || of.isEmpty() ? "" : ", may be of " + of;
    return switch (doubt.reason()) {
      case TAKEN -> doubt.line() + ": of " + of + ", which may hold it";
      case FINES -> "the fines of " + of + " were put into it";
      case PART_BAG -> "it was begun with a part bag of " + of;
      case FLUSH_INTO -> "a flush that was run after " + of + " was put into it";
      case NEXT_ON_LINE ->
          "made next on the line after "
              + of
              + (doubt.names().isEmpty() ? "" : ", with a flush of " + doubt.names() + " between")
              + cleaned(doubt);
      case ORDER_NOT_TOLD ->
          "made at the same plant as "
              + of
              + ", and no record tells in which order"
              + cleaned(doubt);
      case NOT_TOLD,
          LEFT_OUT,
          FLUSHED,
          NO_SUCH_LOT,
          LOT_OF_ANOTHER,
          NOT_THERE,
          NO_RECORD,
          FROM_BIN,
          NAMED_IN_BIN,
          BIN_EMPTY,
          BIN_SHORT ->
          words(doubt.line(), doubt.reason(), doubt.names()) + may;
    };
  }

  private static String cleaned(Doubt doubt) {
    return doubt.cleaned().isEmpty()
        ? ""
        : ", and the line was cleaned " + doubt.cleaned() + ", says its record";
  }

  static List<String> unknown(Unknown line) {
    return List.of(
        line.batch(),
        words(line.line(), line.reason(), line.names()),
        line.kg().isPresent() ? Figures.plain(line.kg().getAsDouble()) : "not given",
        line.of().isEmpty() ? "no lot of it is given" : String.join(", ", line.of()));
  }

  private static String words(String line, Reason reason, String names) {
    return switch (reason) {
      case NOT_TOLD -> line + ": the lot of that line is not given";
      case LEFT_OUT -> line + ": in the recipe, not given in the record";
      case FLUSHED ->
          line
              + ": the line was flushed with it, "
              + (names.isEmpty() ? "its lot is not given" : "told as " + names);
      case NO_SUCH_LOT -> line + ": lot " + names + ", which no file of lots/ gives";
      case LOT_OF_ANOTHER -> line + ": lot " + names + ", which is of something else";
      case NOT_THERE -> line + ": lot " + names + ", which was not there on that day";
      case NO_RECORD -> line + ": of a batch of it that no record tells";
      case FROM_BIN -> line + ": from bin " + names + ", in which other lots could be too";
      case NAMED_IN_BIN -> line + ": of this lot, which lay in bin " + names + " with others";
      case BIN_EMPTY -> line + ": from bin " + names + ", in which no lot of it could be";
      case BIN_SHORT -> line + ": from bin " + names + ", which by the books had too little of it";
      case TAKEN, FINES, PART_BAG, FLUSH_INTO, NEXT_ON_LINE, ORDER_NOT_TOLD -> line;
    };
  }
}
