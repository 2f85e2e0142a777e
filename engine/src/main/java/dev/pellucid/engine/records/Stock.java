package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.BegunWith;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves.Moved;
import dev.pellucid.engine.data.Since;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is left of each lot: received, less what batches took, what went back and what was thrown
 * away, with all corrections; and what was put aside for planned batches taken off.
 *
 * <p>What names its lot is certain and counts first. What was taken from a bin without one is then
 * taken of the lots that could be in it, the oldest first; that is how the books are kept, and not
 * what was in the bin.
 */
public final class Stock {
  private final FeedTables tables;
  private final Bins bins;
  private final List<Use> uses;
  private final Set<String> barred;
  private final Map<String, Double> left = new HashMap<>();
  private final List<Draw> draws = new ArrayList<>();

  /**
   * What a use of a bin comes to in the books.
   *
   * @param beyond kg that no lot of it can give
   * @param known whether any lot is known that can be in it
   */
  record Draw(Use use, List<Taken> taken, double beyond, boolean known) {
    Draw {
      taken = List.copyOf(taken);
    }
  }

  /** So many kg of a lot. */
  record Taken(Lot lot, double kg) {}

  public Stock(FeedTables tables, List<Use> uses) {
    this(tables, uses, Set.of());
  }

  /**
   * @param barred numbers of lots of which nothing may be taken
   */
  Stock(FeedTables tables, List<Use> uses, Set<String> barred) {
    this.tables = tables;
    this.bins = new Bins(tables);
    this.barred = Set.copyOf(barred);
    List<Use> sorted = new ArrayList<>(uses);
    sorted.sort(Comparator.comparing(Use::day).thenComparing(Use::batch));
    this.uses = List.copyOf(sorted);
    for (Lot lot : tables.lots().values()) {
      left.put(lot.number(), lot.kg() + moved(lot));
    }
    for (BatchRecord batch : tables.batches().values()) {
      batch
          .bags()
          .flatMap(Bags::begunWith)
          .ifPresent(it -> left.merge(it.batch(), -it.kg(), Double::sum));
    }
    for (boolean made : new boolean[] {true, false}) {
      sorted.stream().filter(use -> use.made() == made && !use.isFromBin()).forEach(this::named);
      sorted.stream().filter(use -> use.made() == made && use.isFromBin()).forEach(this::ofBin);
    }
  }

  /** What came to a lot, or went, beside batches. */
  private static double moved(Lot lot) {
    return sum(lot.moves().corrections())
        - sum(lot.moves().returned())
        - sum(lot.moves().disposed());
  }

  private static double sum(List<Moved> moves) {
    return moves.stream().mapToDouble(Moved::kg).sum();
  }

  private void named(Use use) {
    left.merge(use.lot(), -use.kg(), Double::sum);
  }

  private void ofBin(Use use) {
    List<Lot> lots = bins.possible(use.bin(), use.day());
    List<Taken> taken = spread(use.kg(), lots);
    double beyond = use.kg() - taken.stream().mapToDouble(Taken::kg).sum();
    draws.add(new Draw(use, taken, beyond, !lots.isEmpty()));
  }

  /** Takes of lots one after the other what is there. */
  private List<Taken> spread(double kg, List<Lot> lots) {
    List<Taken> taken = new ArrayList<>();
    double wanted = kg;
    for (Lot lot : lots) {
      double takes = Math.min(wanted, left(lot));
      if (takes > 0) {
        left.merge(lot.number(), -takes, Double::sum);
        taken.add(new Taken(lot, takes));
        wanted -= takes;
      }
    }
    return taken;
  }

  /** kg left of a lot, never less than zero. */
  public double left(Lot lot) {
    return Math.max(0, left.getOrDefault(lot.number(), 0.0));
  }

  /** Whether nothing may be taken of a lot, whatever is left. */
  boolean isBarred(Lot lot) {
    return barred.contains(lot.number());
  }

  /** kg left of a batch that was made: what reached the bags, or what was weighed for it. */
  double left(BatchRecord batch) {
    double weighed = batch.entries().stream().mapToDouble(entry -> entry.kg().orElse(0)).sum();
    double begun = batch.bags().flatMap(Bags::begunWith).map(BegunWith::kg).orElse(0.0);
    double made = batch.bagged().map(bagged -> bagged.thing() - begun).orElse(weighed);
    return left(batch, made - gone(batch));
  }

  /** What went out of the store beside other batches. */
  private static double gone(BatchRecord batch) {
    Since since = batch.since();
    return handed(since.delivered())
        + handed(since.disposed())
        - handed(since.returned())
        + batch.samples().stream().mapToDouble(BatchRecord.Sample::kg).sum();
  }

  private static double handed(List<Since.Handed> moves) {
    return moves.stream().mapToDouble(Since.Handed::kg).sum();
  }

  /** kg left of a batch of which so much is made, or is to be. */
  double left(BatchRecord batch, double made) {
    return Math.max(0, made + left.getOrDefault(batch.number(), 0.0));
  }

  /** What is left of what was really used: batches that are only planned take nothing. */
  public Stock ofMade() {
    return new Stock(tables, uses.stream().filter(Use::made).toList(), barred);
  }

  /** So much less is left. */
  void take(FirstExpiredFirstOut.Pick pick) {
    if (pick.bin().isEmpty() || pick.lots().size() == 1) {
      left.merge(pick.number(), -pick.kg(), Double::sum);
      return;
    }
    List<Lot> lots = new ArrayList<>();
    pick.lots()
        .forEach(number -> Optional.ofNullable(tables.lots().get(number)).ifPresent(lots::add));
    spread(pick.kg(), lots);
  }

  /** Those that name a lot or a bin, in the order of their days. */
  List<Use> uses() {
    return uses;
  }

  /** What was taken from bins, in the books. */
  List<Draw> draws() {
    return List.copyOf(draws);
  }
}
