package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.data.BatchRecord.Sample;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Signed;
import dev.pellucid.engine.data.Since.Decided;
import dev.pellucid.engine.data.Since.Handed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What records tell of bags after they were filled, held against what can be: on which day, of what
 * was released, and no more than there was. A recall that rests on such a record would call the
 * wrong people. Closed records are looked at too: what went where is asked of them for longest.
 */
final class FeedMoves {
  static final Code DAY = new Code("feed-moved-on-wrong-day");
  static final Code UNRELEASED = new Code("delivered-not-released");
  static final Code TWICE = new Code("delivered-twice");

  /** More than this part of a batch is hardly kept on a shelf; common practice, no source. */
  private static final double MOST_KEPT = 0.05;

  static final Code SAMPLE = new Code("sample-larger-than-batch");

  private final FeedTables tables;
  private final LocalDate today;

  FeedMoves(FeedTables tables, LocalDate today) {
    this.tables = tables;
    this.today = today;
  }

  static List<Code> codes() {
    return List.of(DAY, UNRELEASED, SAMPLE, TWICE);
  }

  void look(Consumer<Finding> out) {
    for (BatchRecord record : tables.batches().values()) {
      days(record).stream().distinct().forEach(signed -> day(record, signed).ifPresent(out));
      twice(record).forEach(out);
      for (Handed delivered : record.since().delivered()) {
        unreleased(record, delivered).ifPresent(out);
      }
      record.samples().forEach(sample -> keptUntil(record, sample).ifPresent(out));
      samples(record).ifPresent(out);
    }
  }

  private static List<Signed> days(BatchRecord record) {
    List<Signed> days = new ArrayList<>();
    record.release().flatMap(FeedMoves::signed).ifPresent(days::add);
    record.since().delivered().forEach(one -> days.add(one.signed()));
    record.since().returned().forEach(one -> days.add(one.signed()));
    record.since().disposed().forEach(one -> days.add(one.signed()));
    record.since().counted().forEach(one -> days.add(one.signed()));
    record.since().complaints().forEach(one -> days.add(one.signed()));
    record.since().results().forEach(one -> days.add(one.signed()));
    record.since().decisions().forEach(one -> days.add(one.signed()));
    return days;
  }

  private static Optional<Signed> signed(Release release) {
    return release
        .day()
        .map(day -> new Signed(day, release.by(), release.because(), release.place()));
  }

  private static Optional<Finding> keptUntil(BatchRecord record, Sample sample) {
    return sample
        .until()
        .filter(until -> until.isBefore(record.day()))
        .map(
            until ->
                Finding.error(
                        DAY,
                        sample.written(),
                        record.number()
                            + " was made on "
                            + record.day()
                            + ", and the sample is kept until "
                            + until
                            + ", before there was any of it")
                    .helping("look for a slip in the year or the month"));
  }

  private Optional<Finding> day(BatchRecord record, Signed signed) {
    if (signed.day().isBefore(record.day())) {
      return Optional.of(
          Finding.error(
                  DAY,
                  signed.place(),
                  record.number()
                      + " was made on "
                      + record.day()
                      + ", and this is of "
                      + signed.day()
                      + ", before there was any of it")
              .helping("fix the day; if it was another batch, write it in the record of that one"));
    }
    return signed.day().isAfter(today)
        ? Optional.of(
            Finding.warning(
                    DAY, signed.place(), "this is of " + signed.day() + ", which is in the future")
                .helping("look for a slip in the year or the month; write it once it is done"))
        : Optional.empty();
  }

  /** The same delivery with the same note, written down a second time. */
  private static List<Finding> twice(BatchRecord record) {
    List<Finding> found = new ArrayList<>();
    List<Handed> earlier = new ArrayList<>();
    for (Handed one : record.since().delivered()) {
      Optional<Handed> first = earlier.stream().filter(other -> isSame(one, other)).findFirst();
      first.ifPresent(other -> found.add(twice(one, other)));
      earlier.add(one);
    }
    return found;
  }

  private static boolean isSame(Handed one, Handed other) {
    return one.signed().day().equals(other.signed().day())
        && ByLetters.party(one.party()).equals(ByLetters.party(other.party()))
        && one.kg() == other.kg()
        && !one.note().isBlank()
        && one.note().strip().equals(other.note().strip());
  }

  private static Finding twice(Handed one, Handed other) {
    return Finding.warning(
            TWICE,
            one.signed().place(),
            "the delivery of "
                + words(one)
                + " to "
                + one.party().strip()
                + " on "
                + one.signed().day()
                + " with note "
                + one.note().strip()
                + " stands twice")
        .seeing("first written", other.signed().place())
        .helping("keep one of them; if two left with one note, write them as one");
  }

  /** What was delivered on a day before the batch was made is told by its day alone. */
  private static Optional<Finding> unreleased(BatchRecord record, Handed delivered) {
    LocalDate when = delivered.signed().day();
    Optional<Decision> standing = record.standingOn(when);
    boolean released = standing.filter(it -> it == Decision.RELEASED).isPresent();
    return released || when.isBefore(record.day())
        ? Optional.empty()
        : Optional.of(unreleased(record, delivered, standing));
  }

  private static Finding unreleased(
      BatchRecord record, Handed delivered, Optional<Decision> standing) {
    LocalDate when = delivered.signed().day();
    String to = delivered.party().isBlank() ? "" : " to " + delivered.party().strip();
    String was = standing.map(FeedMoves::words).orElse("not released yet");
    Finding finding =
        Finding.of(
            UNRELEASED,
            standing.isPresent() ? Severity.ERROR : Severity.WARNING,
            delivered.signed().place(),
            record.number() + " was delivered" + to + " on " + when + ", and was " + was);
    Optional<Span> decided = decided(record, when);
    return (decided.isPresent() ? finding.seeing("decided", decided.get()) : finding)
        .helping(
            standing.isPresent()
                ? "call it back; if the day is wrong, or it was released again, fix the record"
                : released(record, when));
  }

  private static String words(Decision decision) {
    return switch (decision) {
      case HELD, ON_HOLD -> "on hold";
      case REJECTED -> "rejected";
      case WITHDRAWN -> "withdrawn";
      case RELEASED -> "released";
    };
  }

  private static String released(BatchRecord record, LocalDate when) {
    return record
        .release()
        .flatMap(Release::day)
        .filter(day -> day.isAfter(when))
        .map(day -> "it was released on " + day + ": fix the day that is wrong")
        .orElse("write who released it and when: release: {decision: released, by: ..., day: ...}");
  }

  /** Where that stands which was decided last up to a day. */
  private static Optional<Span> decided(BatchRecord record, LocalDate when) {
    return record.since().decisions().stream()
        .filter(one -> !one.signed().day().isAfter(when))
        .reduce((one, other) -> other.signed().day().isBefore(one.signed().day()) ? one : other)
        .map(Decided::signed)
        .map(Signed::place)
        .or(() -> record.release().map(Release::place));
  }

  /** Samples together; each weighs less than what is put into bags. */
  private static Optional<Finding> samples(BatchRecord record) {
    double of = record.bagged().map(Located::thing).filter(kg -> kg > 0).orElse(record.kg());
    double kg = record.samples().stream().mapToDouble(Sample::kg).sum();
    Optional<Sample> largest =
        record.samples().stream().max((one, other) -> Double.compare(one.kg(), other.kg()));
    return kg <= of
        ? largest.filter(one -> one.kg() > MOST_KEPT * of).map(one -> much(record, one, of))
        : largest.map(one -> sample(record, one, kg, of));
  }

  private static Finding much(BatchRecord record, Sample sample, double of) {
    return RecordFigureOff.told(
        sample.written(),
        "a sample of "
            + Figures.plain(sample.kg(), Unit.KG)
            + " is kept of "
            + record.number()
            + ", of which there are "
            + Figures.plain(of, Unit.KG),
        Optional.of(Figures.plain(sample.kg() / 10, Unit.KG)));
  }

  private static Finding sample(BatchRecord record, Sample largest, double kg, double of) {
    boolean one = record.samples().size() == 1;
    return Finding.error(
            SAMPLE,
            largest.written(),
            (one ? "the sample is " : "the samples are together ")
                + Figures.plain(kg, Unit.KG)
                + ", of "
                + record.number()
                + " there are "
                + Figures.plain(of, Unit.KG))
        .helping(
            one
                ? Meant.question(Figures.plain(kg) + " g")
                : "write what is kept of each in g, and how much is in the bags");
  }

  /** So much, in bags where they are told. */
  static String words(Handed one) {
    return one.bags().isPresent() ? bags(one.bags().getAsInt()) : Figures.plain(one.kg(), Unit.KG);
  }

  static String bags(int count) {
    return count == 1 ? "1 bag" : count + " bags";
  }

  /** {@code 3 bags of 25 kg and 21.9 kg}. */
  static String words(Bags bags) {
    String full =
        bags.full() == 0 ? "" : bags(bags.full()) + " of " + Figures.plain(bags.of(), Unit.KG);
    String rest = bags.rest() > 0 ? Figures.plain(bags.rest(), Unit.KG) : "";
    return full.isEmpty() || rest.isEmpty() ? full + rest : full + " and " + rest;
  }
}
