package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Which lots could be in a bin on a day: all that came into it since it was last empty. A lot that
 * came on the day on which the bin was emptied may be in it, and what is taken on such a day may be
 * of what was in it before: nobody can say what came first.
 *
 * <p>Bins are held by the letters and digits of their names, see {@link Bin#key}.
 */
public final class Bins {
  private final FeedTables tables;
  private final Map<String, List<Lot>> lots = new HashMap<>();
  private final Map<String, List<String>> keys = new HashMap<>();
  private final Map<String, Bin> bins = new TreeMap<>();

  public Bins(FeedTables tables) {
    this.tables = tables;
    for (Bin bin : tables.bins().values()) {
      bins.merge(Bin.key(bin.name()), bin, Bins::joined);
    }
    tables.lots().values().stream()
        .sorted(Comparator.comparing(Lot::received).thenComparing(Lot::number))
        .forEach(lot -> lot.bin().ifPresent(bin -> put(Bin.key(bin), lot)));
  }

  private static Bin joined(Bin one, Bin other) {
    List<Located<LocalDate>> days =
        Stream.concat(one.emptied().stream(), other.emptied().stream())
            .sorted(Comparator.comparing(Located<LocalDate>::thing))
            .toList();
    return new Bin(one.name(), days);
  }

  private void put(String bin, Lot lot) {
    lots.computeIfAbsent(bin, none -> new ArrayList<>()).add(lot);
    keys.computeIfAbsent(bin, none -> new ArrayList<>()).add(ByLetters.number(lot.number()));
  }

  /** Whether a lot that came on one day could be in a bin on another. */
  public boolean mayHold(String bin, Lot lot, LocalDate day) {
    return lot.bin().filter(its -> Bin.key(its).equals(bin)).isPresent()
        && !lot.received().isAfter(day)
        && !lot.received().isBefore(emptyBefore(bin, day));
  }

  /** The keys of the lots that could be in a bin on a day, in the order in which they came. */
  public List<String> lots(String bin, LocalDate day) {
    return there(bin, day, keys.getOrDefault(bin, List.of()));
  }

  /** Every lot that came into a bin since it was last empty, the oldest first. */
  public List<Lot> possible(String name, LocalDate day) {
    String bin = Bin.key(name);
    return there(bin, day, lots.getOrDefault(bin, List.of()));
  }

  /** Of what is told of each lot of a bin, in their order, that of those which could be there. */
  private <T> List<T> there(String bin, LocalDate day, List<T> told) {
    List<Lot> all = lots.getOrDefault(bin, List.of());
    LocalDate empty = emptyBefore(bin, day);
    int from = count(all, lot -> lot.received().isBefore(empty));
    int to = count(all, lot -> !lot.received().isAfter(day));
    return from < to ? told.subList(from, to) : List.of();
  }

  /** The lots that a line of a record may be of: the one that it names, or those of its bin. */
  public List<Lot> lots(BatchRecord.Entry entry, LocalDate day) {
    Lot lot = tables.lots().get(entry.lot());
    if (lot != null) {
      return List.of(lot);
    }
    return isFromBin(entry) ? possible(entry.bin(), day) : List.of();
  }

  /** Whether it tells a bin, and no lot. */
  public static boolean isFromBin(BatchRecord.Entry entry) {
    return entry.written().isBlank() && !entry.bin().isEmpty();
  }

  /** Whether a lot is still where it was put, and not gone from a bin that was emptied. */
  public boolean isThere(Lot lot, LocalDate day) {
    return lot.bin().isEmpty() || mayHold(Bin.key(lot.bin().get()), lot, day);
  }

  /** The days on which its bin was empty after a lot came, the first one first. */
  public Stream<LocalDate> emptiedAfter(Lot lot) {
    return lot.bin().map(Bin::key).stream()
        .flatMap(bin -> emptied(bin).stream())
        .filter(one -> one.isAfter(lot.received()))
        .sorted();
  }

  /** Of how many lots it is so, where it is so of the first ones alone. */
  private static int count(List<Lot> lots, Predicate<Lot> so) {
    int low = 0;
    int high = lots.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (so.test(lots.get(middle))) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The last day before a day on which a bin was empty. */
  private LocalDate emptyBefore(String bin, LocalDate day) {
    return emptied(bin).stream()
        .filter(one -> one.isBefore(day))
        .max(Comparator.naturalOrder())
        .orElse(LocalDate.MIN);
  }

  /** The days on which a bin was empty. */
  public List<LocalDate> emptied(String bin) {
    return Optional.ofNullable(bins.get(bin)).map(Bin::emptied).orElse(List.of()).stream()
        .map(Located::thing)
        .toList();
  }

  /** A bin as the folder writes it. */
  public String written(String bin) {
    return Optional.ofNullable(bins.get(bin)).map(Bin::name).orElse(bin);
  }
}
