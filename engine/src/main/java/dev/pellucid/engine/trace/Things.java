package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.trace.Recall.State;
import dev.pellucid.engine.trace.Trace.Batch;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Thing;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Numbers made things that can be shown. */
final class Things {
  private final FeedTables tables;
  private final Ledger ledger;
  private final Descent descent;
  private final LocalDate day;

  /**
   * @param day up to which what is decided counts
   */
  Things(FeedTables tables, Ledger ledger, Descent descent, LocalDate day) {
    this.tables = tables;
    this.ledger = ledger;
    this.descent = descent;
    this.day = day;
  }

  Thing thing(String key) {
    return new Thing(
        ledger.written(key), ledger.lot(key).map(this::lot), ledger.page(key).map(this::batch));
  }

  private LotOf lot(Lot lot) {
    return new LotOf(
        lot.ingredient(),
        Optional.ofNullable(tables.ingredients().get(lot.ingredient()))
            .map(Ingredient::title)
            .orElse(lot.ingredient()),
        lot.received(),
        lot.kg(),
        lot.bestBefore(),
        lot.state(day).map(last -> Standing.word(last.state())),
        lot.supplier(),
        lot.supplierLot(),
        lot.deliveryNote(),
        lot.bin(),
        lot.remark());
  }

  Batch batch(Page page) {
    BatchRecord record = page.record();
    return new Batch(
        record.number(), record.code(), record.day(), state(page).word(), record.closed());
  }

  /** How a batch stands. */
  State state(Page page) {
    return Standing.of(page.record(), day);
  }

  /** How a lot stands. */
  State state(Lot lot) {
    return Standing.of(lot, day);
  }

  /** What is decided of a batch for days that are still to come, in words. */
  List<String> ahead(Page page) {
    return Standing.after(day, page.record());
  }

  /** The same of a lot. */
  List<String> ahead(Lot lot) {
    return Standing.after(day, lot);
  }

  /** Those that hold themselves, if the records are right. */
  List<String> circle(Collection<String> among) {
    return new TreeSet<>(among).stream().filter(descent::isInCircle).map(ledger::written).toList();
  }
}
