package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Fines;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Sample;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves;
import dev.pellucid.engine.data.Since;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.Page.Drawn;
import dev.pellucid.engine.trace.Page.Taken;
import dev.pellucid.engine.trace.Recall.Balance;
import dev.pellucid.engine.trace.Recall.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the records tell of where a lot or a batch went, and whether it adds up. */
final class Books {
  private final Ledger ledger;
  private final Descent descent;
  private final LocalDate day;
  private final Unnamed unnamed;

  /**
   * @param day on which it is asked
   */
  Books(Ledger ledger, Descent descent, LocalDate day) {
    this.ledger = ledger;
    this.descent = descent;
    this.day = day;
    this.unnamed = new Unnamed(ledger, day);
  }

  /** Of a number: of the lot of it, else of the batch, else of what records take of it. */
  Balance of(String key) {
    return ledger
        .lot(key)
        .map(this::of)
        .or(() -> ledger.page(key).map(this::of))
        .orElseGet(
            () ->
                new Account(OptionalDouble.empty(), LocalDate.MIN, day)
                    .taken(takenBy(key))
                    .balance());
  }

  Balance of(Lot lot) {
    String key = ByLetters.number(lot.number());
    LotMoves moves = lot.moves();
    Account account =
        new Account(OptionalDouble.of(lot.kg()), lot.received(), day).taken(takenBy(key));
    moves.returned().forEach(one -> account.backToSupplier(one.signed().day(), one.kg()));
    moves.disposed().forEach(one -> account.disposed(one.signed().day(), one.kg()));
    moves.corrections().forEach(one -> account.corrected(one.signed().day(), -one.kg()));
    moves.counted().forEach(one -> account.counted(one.signed().day(), one.kg()));
    unnamed.into(account, key);
    ledger
        .bins()
        .emptiedAfter(lot)
        .findFirst()
        .filter(one -> one.isBefore(day))
        .ifPresent(account::emptied);
    return account.balance();
  }

  Balance of(Page page) {
    BatchRecord record = page.record();
    List<Recall.Taken> taken = fromBags(page);
    Account account = new Account(had(page), record.day(), day).taken(taken).water(added(record));
    Since since = record.since();
    since.delivered().forEach(one -> account.delivered(one.signed().day(), one.kg()));
    since.returned().forEach(one -> account.cameBack(one.signed().day(), one.kg()));
    since.disposed().forEach(one -> account.disposed(one.signed().day(), one.kg()));
    since.counted().forEach(one -> account.counted(one.signed().day(), one.kg()));
    record.samples().stream()
        .mapToDouble(Sample::kg)
        .forEach(kg -> account.sample(record.day(), kg));
    unnamed.into(account, page.key());
    return account.bags(new FullBags(record, taken, day).left()).balance();
  }

  /** All that is in the bags; where that is not told, all that was weighed. */
  private static OptionalDouble had(Page page) {
    BatchRecord record = page.record();
    if (!record.isMade() && record.bagged().isEmpty()) {
      return OptionalDouble.empty();
    }
    return record.bagged().map(Located::thing).map(OptionalDouble::of).orElse(page.made());
  }

  /** Water of which nobody can say how much is left: where what is in the bags is not told. */
  private static double added(BatchRecord record) {
    return record.bagged().isEmpty() ? record.water().map(Located::thing).orElse(0.0) : 0;
  }

  /**
   * Every batch that took of a number, as the records name it, in the order of their days. What was
   * named out of a bin with others is of none of them for certain.
   */
  List<Recall.Taken> takenBy(String key) {
    List<Recall.Taken> all = new ArrayList<>();
    for (Page page : descent.takers(key)) {
      for (Taken taken : page.taken()) {
        if (taken.key().equals(key) && taken.kind() != Kind.FLUSH) {
          all.add(taken(page, taken.kind(), taken.kg()));
        }
      }
    }
    for (Page page : ledger.drawn(key)) {
      for (Drawn drawn : page.drawn()) {
        if (drawn.flush() && drawn.named().equals(key) && !ledger.isShared(drawn)) {
          all.add(flushed(page, drawn));
        }
      }
    }
    return all;
  }

  /** A flush was taken by what it was put into, else by the batch before which it was run. */
  private Recall.Taken flushed(Page page, Drawn drawn) {
    Page into = ledger.put().flush(page.record()).flatMap(ledger::page).orElse(page);
    return taken(into, Kind.FLUSH, Kilograms.of(drawn.kg()));
  }

  private static Recall.Taken taken(Page page, Kind kind, Kilograms kg) {
    return new Recall.Taken(page.number(), page.day(), kind, kg, !page.record().isMade());
  }

  /** Without the fines, which never were in the bags, where the bags are told. */
  private List<Recall.Taken> fromBags(Page page) {
    if (page.record().bagged().isEmpty()) {
      return takenBy(page.key());
    }
    double fines = page.record().fines().map(Fines::kg).orElse(0.0);
    Optional<String> to = ledger.put().fines(page.record()).map(ledger::written);
    List<Recall.Taken> all = new ArrayList<>();
    for (Recall.Taken one : takenBy(page.key())) {
      if (one.kind() != Kind.FINES) {
        boolean gotFines = to.equals(Optional.of(one.into())) && one.kind() != Kind.PART_BAG;
        double less = gotFines ? Math.min(fines, one.kg().told()) : 0;
        fines -= less;
        Kilograms kg = new Kilograms(one.kg().told() - less, one.kg().whole());
        all.add(new Recall.Taken(one.into(), one.day(), one.kind(), kg, one.planned()));
      }
    }
    return all;
  }
}
