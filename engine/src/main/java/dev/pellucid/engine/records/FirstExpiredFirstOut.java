package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lots to take for a line when none is named: first expired, first out. Only lots that are
 * there, not expired on the day, passed for what is made, dry enough and not over a legal maximum
 * of its material; what does not age goes last, and of one day the one received first. A bin is
 * taken from only where all of this holds for every lot that can be in it.
 *
 * @param picks in the order in which they are to be emptied
 * @param shortfall kg that no lot can give
 * @param passedOver why others of which something is left are not taken
 */
public record FirstExpiredFirstOut(List<Pick> picks, double shortfall, List<String> passedOver) {
  private static final double HOURS_A_DAY = 24;

  public FirstExpiredFirstOut {
    picks = List.copyOf(picks);
    passedOver = List.copyOf(passedOver);
  }

  /**
   * So many kg of a lot, of a batch of a premix, or of a bin with several lots.
   *
   * @param number of the lot or batch; of a bin its name
   * @param bin what it is taken from; empty where it lies in none
   * @param lots those that it can be; of a batch itself
   */
  public record Pick(String number, String bin, List<String> lots, double kg) {
    public Pick {
      lots = List.copyOf(lots);
    }

    Pick(String number, double kg) {
      this(number, "", List.of(number), kg);
    }

    Pick of(double other) {
      return new Pick(number, bin, lots, other);
    }
  }

  /** Nothing at all where the folder keeps no lots of the ingredient. */
  public static Optional<FirstExpiredFirstOut> of(
      Ingredient ingredient, double kg, GoesInto into, FeedTables tables, Stock stock) {
    boolean kept =
        tables.lots().values().stream().anyMatch(lot -> lot.ingredient().equals(ingredient.name()));
    if (!kept) {
      return Optional.empty();
    }
    List<Heap> heaps = new ArrayList<>(Heap.of(ingredient, tables, stock, into.day()));
    heaps.sort(Heap.ORDER);
    List<Pick> there = new ArrayList<>();
    List<String> passedOver = new ArrayList<>();
    for (Heap heap : heaps) {
      Optional<String> hindrance = heap.hindrance(ingredient, into);
      if (hindrance.isEmpty()) {
        there.add(pick(heap, heap.most(into)));
      } else if (heap.left() > 0) {
        passedOver.add(hindrance.get());
      }
    }
    return Optional.of(of(kg, there, passedOver));
  }

  private static Pick pick(Heap heap, double kg) {
    return new Pick(heap.number(), heap.bin(), heap.lots().stream().map(Lot::number).toList(), kg);
  }

  /**
   * Of the batches of a premix that may be used, the oldest first; nothing at all where the folder
   * keeps no record of any.
   */
  public static Optional<FirstExpiredFirstOut> of(
      ResolvedPremix premix, double kg, GoesInto into, FeedTables tables, Stock stock) {
    List<BatchRecord> batches = new ArrayList<>(tables.batches().values());
    batches.removeIf(batch -> !batch.code().equals(premix.code()) || !batch.isMade());
    batches.sort(Comparator.comparing(BatchRecord::day).thenComparing(BatchRecord::serial));
    Inside inside = new Inside(tables, into.known());
    List<Pick> there = new ArrayList<>();
    List<String> passedOver = new ArrayList<>();
    for (BatchRecord batch : batches) {
      Optional<String> hindrance =
          hindrance(batch, premix, into.day()).or(() -> inside.hindrance(batch, into));
      if (hindrance.isEmpty()) {
        there.add(new Pick(batch.number(), stock.left(batch)));
      } else if (stock.left(batch) > 0 && !batch.closed()) {
        passedOver.add("batch " + batch.number() + " " + hindrance.get());
      }
    }
    return batches.isEmpty() ? Optional.empty() : Optional.of(of(kg, there, passedOver));
  }

  /** The first of those that are there, until there is enough. */
  static FirstExpiredFirstOut of(double kg, List<Pick> there, List<String> passedOver) {
    List<Pick> picks = new ArrayList<>();
    double wanted = kg;
    for (Pick one : there) {
      double taken = Math.min(wanted, one.kg());
      if (taken > Closeness.to(kg)) {
        picks.add(one.of(taken));
        wanted -= taken;
      }
    }
    double lacks = wanted > Closeness.to(kg) ? wanted : 0;
    return new FirstExpiredFirstOut(picks, lacks, passedOver);
  }

  private static Optional<String> hindrance(
      BatchRecord batch, ResolvedPremix premix, LocalDate day) {
    if (batch.closed() || batch.isRejected() || batch.isHeld()) {
      return Optional.of("is not released");
    }
    if (batch.day().isAfter(day)) {
      return Optional.of("is made on " + batch.day());
    }
    return keeps(batch, premix, day) ? Optional.empty() : Optional.of("is too old");
  }

  /** Whether a batch of a premix is still good on a day. */
  static boolean keeps(BatchRecord batch, ResolvedPremix premix, LocalDate day) {
    return premix
        .keeping()
        .map(keeping -> batch.day().plusDays((long) Math.floor(keeping.hours() / HOURS_A_DAY)))
        .filter(day::isAfter)
        .isEmpty();
  }
}
