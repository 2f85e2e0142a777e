package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Since.Handed;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Moved;
import dev.pellucid.engine.trace.Recall.PartBag;
import dev.pellucid.engine.trace.Recall.Retained;
import dev.pellucid.engine.trace.Trace.Doubt;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A batch that holds what is recalled, or may, with all that became of it. */
final class AffectedBatch {
  private final Books books;
  private final Found found;
  private final Things things;
  private final LocalDate day;

  /**
   * @param day on which it is asked: what is written for later did not happen yet
   */
  AffectedBatch(Books books, Found found, Things things, LocalDate day) {
    this.books = books;
    this.found = found;
    this.things = things;
    this.day = day;
  }

  Affected batch(Page page) {
    boolean itself = page.key().equals(found.key());
    boolean certain = itself || found.holds(page);
    Kilograms kg = itself ? Kilograms.of(page.made()) : sure(page);
    List<Doubt> why = certain ? List.of() : found.doubts(page);
    return new Affected(
        things.batch(page),
        things.state(page),
        certain,
        kg,
        itself ? kg : found.most(page),
        why,
        found.mayOnLine(page),
        made(page.record()),
        bag(page.record()),
        moved(page.record().since().delivered()),
        moved(page.record().since().returned()),
        moved(page.record().since().disposed()),
        moved(page.record().since().counted()),
        books.takenBy(page.key()),
        samples(page.record()),
        begunWith(page.record()),
        books.of(page));
  }

  private Kilograms sure(Page page) {
    return page.taken().stream()
        .map(one -> one.key().equals(found.key()) ? one.kg() : found.amounts().through(one, page))
        .reduce(Kilograms.NONE, Kilograms::plus);
  }

  private static Optional<Amount> made(BatchRecord record) {
    return record
        .bagged()
        .map(Located::thing)
        .map(kg -> new Amount(record.bags().map(Bags::full).orElse(0), kg));
  }

  private static OptionalDouble bag(BatchRecord record) {
    return record.bags().map(Bags::of).filter(kg -> kg > 0).stream()
        .mapToDouble(kg -> kg)
        .findFirst();
  }

  private List<Moved> moved(List<Handed> all) {
    return all.stream()
        .filter(one -> !one.signed().day().isAfter(day))
        .map(AffectedBatch::moved)
        .toList();
  }

  private static Moved moved(Handed one) {
    return new Moved(
        one.signed().day(),
        one.signed().by(),
        one.party(),
        Recall.amount(one.bags(), one.kg()),
        one.note().isEmpty() ? one.signed().because() : one.note());
  }

  private static List<Retained> samples(BatchRecord record) {
    return record.samples().stream()
        .map(one -> new Retained(one.kg(), one.place(), one.until()))
        .toList();
  }

  private static Optional<PartBag> begunWith(BatchRecord record) {
    return record.bags().flatMap(Bags::begunWith).map(one -> new PartBag(one.batch(), one.kg()));
  }
}
