package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Sample;
import dev.pellucid.engine.data.Since.Handed;
import dev.pellucid.engine.trace.Recall.Kind;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How many full bags of a batch can lie in the store, since they were filled or counted: bags that
 * left and came back, less those that must have been opened for samples, part bags and loose feed.
 */
final class FullBags {
  private static final double CLOSE = 1e-9;

  private final BatchRecord record;
  private final List<Recall.Taken> taken;
  private final LocalDate today;
  private final double of;

  /**
   * @param taken what batches took out of the bags
   * @param today on which it is asked
   */
  FullBags(BatchRecord record, List<Recall.Taken> taken, LocalDate today) {
    this.record = record;
    this.taken = taken;
    this.today = today;
    this.of = record.bags().map(Bags::of).orElse(0.0);
  }

  /** Zero where nobody knows: where bags were not counted, or a batch took of them by weight. */
  int left() {
    Optional<Handed> counted =
        after(record.day().minusDays(1), record.since().counted().stream()).stream()
            .reduce((one, two) -> two.signed().day().isBefore(one.signed().day()) ? one : two);
    LocalDate from = counted.map(it -> it.signed().day()).orElse(LocalDate.MIN);
    boolean told = counted.map(it -> it.bags().isPresent()).orElse(true);
    if (of <= 0 || !told || taken.stream().anyMatch(one -> isByWeight(one, from))) {
      return 0;
    }
    return counted.isPresent()
        ? left(from, bags(counted.get()), loose(counted.get()))
        : left(
            from,
            record.bags().map(Bags::full).orElse(0),
            record.bags().map(Bags::rest).orElse(0.0));
  }

  /** Loose feed that comes back is no bag, and is not packed into one. */
  private int left(LocalDate from, int full, double rest) {
    int bags = full;
    double loose = rest - (isAfter(record.day(), from) ? samples() : 0);
    for (Handed one : after(from, Stream.concat(delivered(), record.since().disposed().stream()))) {
      bags -= bags(one);
      loose -= loose(one);
    }
    for (Recall.Taken one : taken) {
      loose -= one.kind() == Kind.PART_BAG && isTaken(one, from) ? one.kg().told() : 0;
    }
    for (Handed one : after(from, record.since().returned().stream())) {
      bags += bags(one);
    }
    int opened = loose < -CLOSE ? (int) Math.ceil((-loose - CLOSE) / of) : 0;
    return Math.max(0, bags - opened);
  }

  private double samples() {
    return record.samples().stream().mapToDouble(Sample::kg).sum();
  }

  private Stream<Handed> delivered() {
    return record.since().delivered().stream();
  }

  private static int bags(Handed one) {
    return one.bags().orElse(0);
  }

  private double loose(Handed one) {
    return one.kg() - bags(one) * of;
  }

  private boolean isByWeight(Recall.Taken one, LocalDate from) {
    boolean some = one.kg().told() > CLOSE || !one.kg().whole();
    return some && one.kind() != Kind.PART_BAG && isTaken(one, from);
  }

  private boolean isTaken(Recall.Taken one, LocalDate from) {
    return !one.planned() && isAfter(one.day(), from);
  }

  private List<Handed> after(LocalDate day, Stream<Handed> all) {
    return all.filter(one -> isAfter(one.signed().day(), day)).toList();
  }

  /** Whether it was after a day, and is not still to come. */
  private boolean isAfter(LocalDate one, LocalDate day) {
    return one.isAfter(day) && !one.isAfter(today);
  }
}
