package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves.Moved;
import dev.pellucid.engine.records.Bins;
import dev.pellucid.engine.records.ByLetters;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Whether what was drawn from a bin can be of the lots in it, by the books: a lot that was used up,
 * sent back or found gone before cannot have given anything, whatever the bin was called. What left
 * a lot is what its file tells, what records name, and what came from a bin in which there was no
 * other lot; what came from several is counted of none.
 */
final class DrawnFrom {
  /** Sums of weights are this close, kg. */
  private static final double CLOSE = 1e-6;

  private final Bins bins;

  /** By lot, what left it up to the end of each day. */
  private final Map<String, NavigableMap<LocalDate, Double>> gone = new HashMap<>();

  DrawnFrom(Collection<BatchRecord> records, Collection<Lot> lots, Bins bins) {
    this.bins = bins;
    for (Lot lot : lots) {
      String key = ByLetters.number(lot.number());
      out(key, lot.moves().returned(), 1);
      out(key, lot.moves().disposed(), 1);
      out(key, lot.moves().corrections(), -1);
    }
    for (BatchRecord record : records) {
      for (Entry entry : record.entries()) {
        out(of(entry, record.day()), record.day(), entry.kg().orElse(0));
      }
      record.flushed().ifPresent(it -> out(ByLetters.number(it.lot()), record.day(), it.kg()));
    }
    gone.values().forEach(DrawnFrom::addUp);
  }

  /** The lot that it is counted of; empty for none. */
  private String of(Entry entry, LocalDate day) {
    if (!Bins.isFromBin(entry)) {
      return ByLetters.number(entry.written());
    }
    List<String> there = bins.lots(Bin.key(entry.bin()), day);
    return there.size() == 1 ? there.get(0) : "";
  }

  private void out(String lot, List<Moved> moves, int sign) {
    moves.forEach(one -> out(lot, one.signed().day(), sign * one.kg()));
  }

  private void out(String lot, LocalDate day, double kg) {
    gone.computeIfAbsent(lot, none -> new TreeMap<>()).merge(day, kg, Double::sum);
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
   * @param counted whether it is among what left the lots already
   */
  boolean isEnough(List<Lot> lots, LocalDate day, OptionalDouble kg, boolean counted) {
    double left = 0;
    for (Lot lot : lots) {
      left += lots.size() == 1 ? left(lot, day) : Math.max(0, left(lot, day));
    }
    if (kg.isEmpty()) {
      return left > CLOSE;
    }
    return left >= (counted ? 0 : kg.getAsDouble()) - CLOSE;
  }

  /** What the last count before a day found, or all that came, less what left until its end. */
  private double left(Lot lot, LocalDate day) {
    double had = lot.kg();
    LocalDate from = LocalDate.MIN;
    for (Moved count : lot.moves().counted()) {
      LocalDate of = count.signed().day();
      if (of.isBefore(day) && !of.isBefore(from)) {
        had = count.kg();
        from = of;
      }
    }
    String key = ByLetters.number(lot.number());
    return had - (gone(key, day) - gone(key, from));
  }

  private double gone(String lot, LocalDate until) {
    NavigableMap<LocalDate, Double> days = gone.get(lot);
    Map.Entry<LocalDate, Double> last = days == null ? null : days.floorEntry(until);
    return last == null ? 0 : last.getValue();
  }
}
