package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves.Moved;
import dev.pellucid.engine.records.Bins;
import dev.pellucid.engine.records.ByLetters;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Whether what was drawn from a bin can be of the lots in it, by the books: a lot that was used up,
 * sent back or found gone before cannot have given anything, whatever the bin was called. What left
 * a lot is what its file tells, and what was drawn of it alone. What was drawn from a bin with
 * several lots of its kind in it, its lot named or not, is counted of all of them together.
 */
final class DrawnFrom {
  /** Sums of weights are this close, kg. */
  private static final double CLOSE = 1e-6;

  private final Bins bins;
  private final UnaryOperator<String> kind;
  private final Map<String, Lot> lots = new HashMap<>();

  /** By lot, what left it up to the end of each day. */
  private final Map<String, NavigableMap<LocalDate, Double>> gone = new HashMap<>();

  /** By the first of several lots and by all of them, what left them together. */
  private final Map<String, Map<Set<String>, NavigableMap<LocalDate, Double>>> together =
      new HashMap<>();

  /** What was asked before: all that is drawn from a bin on a day asks for the same. */
  private final Map<Asked, Double> answers = new HashMap<>();

  private record Asked(Set<String> lots, LocalDate day) {}

  /**
   * @param kind what the lots of a line are of
   */
  DrawnFrom(
      Collection<BatchRecord> records,
      Collection<Lot> lots,
      Bins bins,
      UnaryOperator<String> kind) {
    this.bins = bins;
    this.kind = kind;
    for (Lot lot : lots) {
      String key = ByLetters.number(lot.number());
      this.lots.put(key, lot);
      out(key, lot.moves().returned(), 1);
      out(key, lot.moves().disposed(), 1);
      out(key, lot.moves().corrections(), -1);
    }
    for (BatchRecord record : records) {
      record.entries().forEach(entry -> out(entry, record.day()));
      record.flushed().ifPresent(flush -> out(flush, record.day()));
    }
    gone.values().forEach(DrawnFrom::addUp);
    together.values().forEach(all -> all.values().forEach(DrawnFrom::addUp));
  }

  private void out(Entry entry, LocalDate day) {
    entry
        .kg()
        .ifPresent(
            kg -> out(ByLetters.number(entry.written()), entry.bin(), entry.line(), day, kg));
  }

  private void out(Flushed flush, LocalDate day) {
    out(ByLetters.number(flush.lot()), "", flush.with(), day, flush.kg());
  }

  private void out(String named, String bin, String line, LocalDate day, double kg) {
    Set<String> could = could(named, bin, day);
    TreeSet<String> right = new TreeSet<>(could);
    right.removeIf(one -> !isOf(one, line));
    if (could.size() == 1) {
      out(could.iterator().next(), day, kg);
    } else if (!right.isEmpty()) {
      add(
          together
              .computeIfAbsent(right.first(), none -> new LinkedHashMap<>())
              .computeIfAbsent(right, none -> new TreeMap<>()),
          day,
          kg);
    } else if (!named.isEmpty()) {
      out(named, day, kg);
    }
  }

  private Set<String> could(String named, String bin, LocalDate day) {
    Set<String> could = new TreeSet<>();
    Stream.concat(
            Stream.of(bin).filter(name -> !name.isBlank()),
            Optional.ofNullable(lots.get(named)).flatMap(Lot::bin).stream())
        .forEach(one -> could.addAll(bins.lots(Bin.key(one), day)));
    if (!named.isEmpty()) {
      could.add(named);
    }
    return could;
  }

  private boolean isOf(String lot, String line) {
    return Optional.ofNullable(lots.get(lot))
        .filter(it -> it.ingredient().equals(kind.apply(line)))
        .isPresent();
  }

  private void out(String lot, List<Moved> moves, int sign) {
    moves.forEach(one -> out(lot, one.signed().day(), sign * one.kg()));
  }

  private void out(String lot, LocalDate day, double kg) {
    add(gone.computeIfAbsent(lot, none -> new TreeMap<>()), day, kg);
  }

  private static void add(NavigableMap<LocalDate, Double> days, LocalDate day, double kg) {
    days.merge(day, kg, Double::sum);
  }

  private static void addUp(NavigableMap<LocalDate, Double> gone) {
    double sum = 0;
    for (Map.Entry<LocalDate, Double> day : gone.entrySet()) {
      sum += day.getValue();
      day.setValue(sum);
    }
  }

  /**
   * Whether lots that could be in a bin can have given so much on a day.
   *
   * @param kg absent where it is not told
   * @param counted whether it is among what left them already
   */
  boolean isEnough(List<Lot> lots, LocalDate day, OptionalDouble kg, boolean counted) {
    Map<String, Lot> all = new LinkedHashMap<>();
    lots.forEach(lot -> all.put(ByLetters.number(lot.number()), lot));
    double left = -answers.computeIfAbsent(new Asked(all.keySet(), day), it -> drawn(all, day));
    for (Lot lot : lots) {
      left += lots.size() == 1 ? left(lot, day) : Math.max(0, left(lot, day));
    }
    if (kg.isEmpty()) {
      return left > CLOSE;
    }
    return left >= (counted ? 0 : kg.getAsDouble()) - CLOSE;
  }

  /** What was drawn of some of them together since the last count of each, and of no other. */
  private double drawn(Map<String, Lot> lots, LocalDate day) {
    Map<String, LocalDate> counts = new HashMap<>();
    lots.forEach(
        (key, lot) -> counted(lot, day).ifPresent(it -> counts.put(key, it.signed().day())));
    double kg = 0;
    for (String first : lots.keySet()) {
      for (var some : together.getOrDefault(first, Map.of()).entrySet()) {
        if (lots.keySet().containsAll(some.getKey())) {
          LocalDate from =
              counts.entrySet().stream()
                  .filter(one -> some.getKey().contains(one.getKey()))
                  .map(Map.Entry::getValue)
                  .max(Comparator.naturalOrder())
                  .orElse(LocalDate.MIN);
          kg += upTo(some.getValue(), day) - upTo(some.getValue(), from);
        }
      }
    }
    return kg;
  }

  /** What the last count before a day found, or all that came, less what left until its end. */
  private double left(Lot lot, LocalDate day) {
    Optional<Moved> count = counted(lot, day);
    NavigableMap<LocalDate, Double> out =
        gone.getOrDefault(ByLetters.number(lot.number()), new TreeMap<>());
    double before = count.map(one -> upTo(out, one.signed().day())).orElse(0.0);
    return count.map(Moved::kg).orElse(lot.kg()) - (upTo(out, day) - before);
  }

  /** The last count before a day, of those since the lot came. */
  private static Optional<Moved> counted(Lot lot, LocalDate day) {
    return lot.moves().counted().stream()
        .filter(one -> one.signed().day().isBefore(day))
        .filter(one -> !one.signed().day().isBefore(lot.received()))
        .reduce((one, two) -> two.signed().day().isBefore(one.signed().day()) ? one : two);
  }

  private static double upTo(NavigableMap<LocalDate, Double> days, LocalDate day) {
    Map.Entry<LocalDate, Double> last = days.floorEntry(day);
    return last == null ? 0 : last.getValue();
  }
}
