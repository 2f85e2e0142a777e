package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.Bins;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.InBin;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.NotFollowed;
import dev.pellucid.engine.trace.Recall.State;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Recall.Stop;
import dev.pellucid.engine.trace.Recall.Store;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The whole answer to the recall of one number. */
final class Recalling {
  private final Ledger ledger;
  private final LineOrder order;
  private final Things things;
  private final Books books;
  private final Found found;
  private final List<String> earlier;
  private final LocalDate day;

  /**
   * @param earlier batches with a line of its kind that were made before it was there
   * @param day on which it is asked
   */
  Recalling(
      Ledger ledger,
      LineOrder order,
      Things things,
      Books books,
      Found found,
      List<String> earlier,
      LocalDate day) {
    this.ledger = ledger;
    this.order = order;
    this.things = things;
    this.books = books;
    this.found = found;
    this.earlier = earlier;
    this.day = day;
  }

  Answer answer() {
    String key = found.key();
    List<Affected> batches = batches();
    List<Step> steps = new ArrayList<>();
    concerned().forEach(page -> steps.addAll(found.steps(page)));
    return new Answer(
        things.thing(key),
        state(),
        books.of(key),
        books.takenBy(key),
        batches,
        steps,
        Parties.of(batches),
        stop(batches),
        notFollowed(),
        things.circle(found.amounts().holders()));
  }

  private List<Affected> batches() {
    AffectedBatch affected = new AffectedBatch(books, found, things, day);
    Stream<Page> itself = ledger.page(found.key()).stream();
    Stream<Page> others =
        Stream.of(sure(), ledger.pages().stream().filter(found::may), onLine())
            .flatMap(pages -> pages);
    return Stream.concat(itself, others).map(affected::batch).toList();
  }

  private Stream<Page> sure() {
    return ledger.pages().stream()
        .filter(page -> found.holds(page) && !page.key().equals(found.key()));
  }

  private Stream<Page> onLine() {
    return ledger.pages().stream().filter(found::mayOnLine);
  }

  private Stream<Page> concerned() {
    return ledger.pages().stream().filter(found::concerns);
  }

  private State state() {
    String key = found.key();
    return ledger
        .lot(key)
        .map(things::state)
        .or(() -> ledger.page(key).map(things::state))
        .orElse(new State("not inspected", Optional.empty(), "", "", false));
  }

  private Stop stop(List<Affected> batches) {
    List<Left> left = new ArrayList<>();
    List<Left> closed = new ArrayList<>();
    ledger.lot(found.key()).ifPresent(lot -> lot(lot).ifPresent(left::add));
    for (Affected batch : batches) {
      if (!isPlanned(batch)) {
        left(batch).ifPresent((isClosed(batch) ? closed : left)::add);
      }
    }
    Predicate<Left> stopped = one -> one.state().isStopped();
    return new Stop(
        left.stream().filter(stopped.negate()).toList(),
        left.stream().filter(stopped).toList(),
        closed,
        batches.stream().filter(Recalling::isPlanned).toList(),
        ledger.lot(found.key()).flatMap(this::bin).stream().toList());
  }

  private static boolean isPlanned(Affected batch) {
    return batch.state().word().equals("planned") && !batch.batch().closed();
  }

  private Optional<Left> lot(Lot lot) {
    Optional<Store> store = books.of(lot).store();
    return isLeft(store)
        ? Optional.of(new Left(things.thing(found.key()), things.state(lot), true, store))
        : Optional.empty();
  }

  /** Whether its record says that it is fed or gone, and nobody counted that. */
  private static boolean isClosed(Affected batch) {
    return batch.batch().closed() && batch.balance().store().flatMap(Store::counted).isEmpty();
  }

  private Optional<Left> left(Affected batch) {
    Optional<Store> store = batch.balance().store();
    return isLeft(store)
        ? Optional.of(
            new Left(
                things.thing(ByLetters.number(batch.batch().number())),
                batch.state(),
                batch.certain(),
                store))
        : Optional.empty();
  }

  private static boolean isLeft(Optional<Store> store) {
    return store.map(one -> one.amount().kg() > 0).orElse(true);
  }

  /**
   * The bin in which a lot may still lie, with all that may lie there until it is emptied. That it
   * is to be emptied later is no reason to take of it before.
   */
  private Optional<InBin> bin(Lot lot) {
    Bins bins = ledger.bins();
    LocalDate from = lot.received().isAfter(day) ? lot.received() : day;
    return lot.bin()
        .map(Bin::key)
        .filter(bin -> bins.mayHold(bin, lot, from))
        .map(
            bin ->
                new InBin(
                    bins.written(bin),
                    Stream.of(from, until(lot, from))
                        .flatMap(on -> bins.lots(bin, on).stream())
                        .distinct()
                        .map(ledger::written)
                        .toList(),
                    bins.emptied(bin).stream()
                        .filter(one -> !one.isAfter(day))
                        .max(Comparator.naturalOrder())));
  }

  /** The first day from a day on after which a lot no longer lies in its bin. */
  private LocalDate until(Lot lot, LocalDate from) {
    return ledger
        .bins()
        .emptiedAfter(lot)
        .filter(one -> !one.isBefore(from))
        .findFirst()
        .orElse(LocalDate.MAX.minusDays(1));
  }

  private List<NotFollowed> notFollowed() {
    List<NotFollowed> not = new ArrayList<>();
    add(not, Limit.SECOND_ON_LINE, "", second());
    add(
        not,
        Limit.PARTY_NOT_TOLD,
        "",
        concerned().filter(this::hasNoParty).map(Page::number).toList());
    add(
        not,
        Limit.PLANT_NOT_KNOWN,
        "",
        concerned().filter(order::isPlantUnknown).map(Page::number).toList());
    add(not, Limit.MADE_BEFORE, "", earlier);
    Ahead ahead = new Ahead(day);
    ledger
        .lot(found.key())
        .ifPresent(
            lot -> {
              ahead(not, Limit.DECIDED_AHEAD, lot.number(), things.ahead(lot));
              ahead(not, Limit.MOVED_AHEAD, lot.number(), ahead.of(lot));
            });
    concerned()
        .forEach(
            page -> {
              ahead(not, Limit.DECIDED_AHEAD, page.number(), things.ahead(page));
              ahead(not, Limit.MOVED_AHEAD, page.number(), ahead.of(page.record()));
            });
    concerned().forEach(page -> inWords(page, not));
    return not;
  }

  private static void add(List<NotFollowed> not, Limit limit, String words, List<String> numbers) {
    if (!numbers.isEmpty()) {
      not.add(new NotFollowed(limit, numbers, words));
    }
  }

  private static void ahead(List<NotFollowed> not, Limit limit, String number, List<String> words) {
    if (!words.isEmpty()) {
      not.add(new NotFollowed(limit, List.of(number), String.join(", ", words)));
    }
  }

  private boolean hasNoParty(Page page) {
    return page.record().since().delivered().stream()
        .filter(one -> !one.signed().day().isAfter(day))
        .anyMatch(one -> one.party().isBlank());
  }

  /** What comes on the line after a batch that has it by the line alone. */
  private List<String> second() {
    return concerned()
        .filter(page -> !found.isInMix(page))
        .flatMap(order::comesNext)
        .filter(page -> !found.concerns(page))
        .map(Page::number)
        .distinct()
        .toList();
  }

  /** Fines, and a flush after a batch that may leave something behind, of which no number tells. */
  private void inWords(Page page, List<NotFollowed> not) {
    BatchRecord record = page.record();
    record
        .fines()
        .filter(fines -> ledger.put().fines(record).isEmpty())
        .ifPresent(fines -> words(not, page, "fines", fines.to(), fines.kg()));
    boolean after = order.comesAfter(page).anyMatch(found::isInMix);
    record
        .flushed()
        .filter(flush -> (after || mayBeFlush(page)) && ledger.put().flush(record).isEmpty())
        .ifPresent(flush -> words(not, page, "flush", flush.to(), flush.kg()));
  }

  /** Whether what was run through before a batch may be of the thing itself. */
  private boolean mayBeFlush(Page page) {
    List<String> kinds = ledger.kinds(found.key());
    boolean there = !ledger.since(found.key()).isAfter(page.day());
    return page.drawn().stream().anyMatch(one -> one.flush() && ledger.mayBe(one, found.key()))
        || (there
            && page.open().stream().anyMatch(one -> one.flush() && kinds.contains(one.kind())));
  }

  private static void words(List<NotFollowed> not, Page page, String what, String to, double kg) {
    String where = to.isBlank() ? "no record tells where to" : to.strip();
    String words = what + ", " + Figures.plain(kg) + " kg: " + where;
    not.add(new NotFollowed(Limit.TOLD_IN_WORDS, List.of(page.number()), words));
  }
}
