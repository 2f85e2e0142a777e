package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** What is left of each lot after all batches that name it, those still planned included. */
public final class Stock {
  static final Code OVERDRAWN = new Code("lot-overdrawn");

  /** Sweepings and rounding: less is nobody's fault (common practice, no source). */
  private static final double SPILT = 0.005;

  private final FeedTables tables;
  private final List<Use> uses;
  private final Set<String> barred;
  private final Map<String, Double> used = new HashMap<>();

  public Stock(FeedTables tables, List<Use> uses) {
    this(tables, uses, Set.of());
  }

  /**
   * @param barred numbers of lots of which nothing may be taken
   */
  Stock(FeedTables tables, List<Use> uses, Set<String> barred) {
    this.tables = tables;
    this.barred = Set.copyOf(barred);
    List<Use> sorted = new ArrayList<>(uses);
    sorted.sort(Comparator.comparing(Use::day).thenComparing(Use::batch));
    this.uses = sorted;
    sorted.forEach(use -> used.merge(use.lot(), use.kg(), Double::sum));
  }

  /** kg left of a lot, never less than zero. */
  public double left(Lot lot) {
    return Math.max(0, lot.kg() - used.getOrDefault(lot.number(), 0.0));
  }

  /** Whether nothing may be taken of a lot, whatever is left. */
  boolean isBarred(Lot lot) {
    return barred.contains(lot.number());
  }

  /** kg left of a batch that was made: what reached the bags, or what was weighed for it. */
  double left(BatchRecord batch) {
    double weighed = batch.entries().stream().mapToDouble(entry -> entry.kg().orElse(0)).sum();
    double made = batch.bagged().map(BatchRecord.Located::thing).orElse(weighed);
    return Math.max(0, made - used.getOrDefault(batch.number(), 0.0));
  }

  /** What is left of what was really used: batches that are only planned take nothing. */
  Stock ofMade() {
    return new Stock(tables, uses.stream().filter(Use::made).toList(), barred);
  }

  /** So much less is left. */
  void take(FirstExpiredFirstOut.Pick pick) {
    used.merge(pick.number(), pick.kg(), Double::sum);
  }

  /** A finding where the record stands that takes more of a lot than there was. */
  void check(Consumer<Finding> out) {
    Map<String, Double> taken = new HashMap<>();
    for (Use use : uses) {
      Lot lot = tables.lots().get(use.lot());
      double before = taken.getOrDefault(use.lot(), 0.0);
      double after = taken.merge(use.lot(), use.kg(), Double::sum);
      if (lot != null && after > lot.kg() * (1 + SPILT) && before <= lot.kg() * (1 + SPILT)) {
        out.accept(overdrawn(lot, use, before));
      }
    }
  }

  private static Finding overdrawn(Lot lot, Use use, double before) {
    return Finding.of(
            OVERDRAWN,
            use.made() ? Severity.WARNING : Severity.ERROR,
            use.place(),
            "of lot "
                + lot.number()
                + " "
                + Figures.plain(Math.max(0, lot.kg() - before), Unit.KG)
                + " are left, "
                + use.batch()
                + " takes "
                + Figures.plain(use.kg(), Unit.KG))
        .seeing("quantity written", lot.declared())
        .helping(
            use.made()
                ? "another lot was used as well, or a weight is wrong: fix the record"
                : "take the rest from another lot, or make a smaller batch");
  }
}
