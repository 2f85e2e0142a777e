package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.records.Trace.Batch;
import dev.pellucid.engine.records.Trace.LotOf;
import dev.pellucid.engine.records.Trace.Thing;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Numbers made things that can be shown. */
final class Things {
  private final FeedTables tables;
  private final Ledger ledger;
  private final Descent descent;

  Things(FeedTables tables, Ledger ledger, Descent descent) {
    this.tables = tables;
    this.ledger = ledger;
    this.descent = descent;
  }

  Thing thing(String key) {
    return new Thing(
        ledger.written(key), ledger.lot(key).map(this::lot), ledger.page(key).map(Things::batch));
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
        lot.lastState().map(last -> Standing.word(last.state())),
        lot.supplier(),
        lot.supplierLot(),
        lot.deliveryNote(),
        lot.bin(),
        lot.remark());
  }

  static Batch batch(Page page) {
    BatchRecord record = page.record();
    return new Batch(
        record.number(), record.code(), record.day(), Standing.of(record).word(), record.closed());
  }

  /** Those that hold themselves, if the records are right. */
  List<String> circle(Collection<String> among) {
    return new TreeSet<>(among).stream().filter(descent::isInCircle).map(ledger::written).toList();
  }
}
