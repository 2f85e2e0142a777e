package dev.pellucid.engine.goal;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.records.BatchTarget;
import dev.pellucid.engine.records.MaterialRequirements;
import dev.pellucid.engine.records.MaterialRequirements.Ahead;
import dev.pellucid.engine.records.MaterialRequirements.Planned;
import dev.pellucid.engine.records.PurchaseList;
import dev.pellucid.engine.records.Stock;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.sharing.FixedBatch;
import dev.pellucid.engine.sharing.SharedOut;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.Wanted;
import dev.pellucid.engine.sharing.Wanted.Due;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Severity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a plan takes of the store, by the walk that purchase lists come of: first what is made as it
 * is recorded, re-balanced batches and premixes, then the feeds that share out what is left.
 */
final class PlanStore {
  private static final double WHOLE = 100;

  /** Less than a gram is nothing to buy. */
  private static final double LEAST = 0.001;

  private final Shared shared;
  private final Whole whole;
  private final LocalDate day;
  private final List<Planned> first = new ArrayList<>();
  private final List<FixedBatch> fixed = new ArrayList<>();
  private final List<String> slips = new ArrayList<>();
  private final Ahead ofFirst;

  /**
   * @param whole the folder as it is checked
   * @param recorded batches that are made as they are recorded
   */
  PlanStore(Shared shared, Whole whole, LocalDate day, List<BatchRecord> recorded) {
    this.shared = shared;
    this.whole = whole;
    this.day = day;
    recorded.forEach(this::recorded);
    this.ofFirst = walk(List.of());
  }

  private void recorded(BatchRecord record) {
    ResolvedPremix premix = shared.resolver().premixes().get(record.code());
    if (premix != null) {
      first.add(Planned.of(record, BatchTarget.of(premix, record.kg())));
      return;
    }
    Optional<ComputedFeed> feed =
        shared
            .trees()
            .path(record.code())
            .flatMap(path -> Streamed.judged(shared, path).feed())
            .flatMap(one -> shared.recordCheck().planned(one, record))
            .map(BatchRecordCheck.Planned::feed);
    Optional<String> wrong = wrong(record);
    if (wrong.isPresent()) {
      slips.add(wrong.get());
    } else if (feed.isPresent()) {
      first.add(Planned.of(record, target(feed.get(), record.kg())));
      fixed.add(FixedBatch.of(record.number(), record.day(), record.kg(), feed.get()));
    }
  }

  /** An error of the record of a re-balanced batch: nobody knows what it takes. */
  private Optional<String> wrong(BatchRecord record) {
    String path = record.declared().file().path();
    return whole.findings().stream()
        .filter(one -> one.severity() == Severity.ERROR)
        .filter(one -> one.span().file().path().equals(path))
        .findFirst()
        .map(Hindrance::placed);
  }

  private Ahead walk(List<Planned> then) {
    return MaterialRequirements.of(
        first, then, shared.tables(), shared.resolver().premixes(), whole.stock(), day);
  }

  /** Batches that are made as they are recorded, of feeds. */
  List<FixedBatch> fixed() {
    return fixed;
  }

  /** What these leave for the others. */
  Stock left() {
    return ofFirst.left();
  }

  /** What must be put right first, a sentence each. */
  List<String> slips() {
    return slips;
  }

  /** What a person should know of batches that are made as they are recorded, a sentence each. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (FixedBatch one : fixed) {
      notes.add(
          one.number()
              + " is re-balanced, so it is made as its record says and takes of the store first;"
              + " its recipe "
              + one.code()
              + " stays as it is, for the shares of the batch stand on it");
    }
    List<String> lacking =
        ofFirst.list().goods().stream()
            .filter(one -> one.lacking() > LEAST && isKept(one.name()))
            .map(one -> Figures.fixed(one.lacking(), 3) + " kg of " + one.name())
            .toList();
    if (!lacking.isEmpty()) {
      notes.add("for what is made as it is recorded the store lacks " + String.join(", ", lacking));
    }
    return notes;
  }

  /** Whether the folder keeps lots of an ingredient. */
  private boolean isKept(String ingredient) {
    return shared.tables().lots().values().stream()
        .anyMatch(lot -> lot.ingredient().equals(ingredient));
  }

  /** The same feeds, each with what premixes bring that are there or planned. */
  List<Wanted> sparing(List<Wanted> wanted) {
    List<Planned> then = new ArrayList<>();
    for (Wanted one : wanted) {
      ComputedFeed feed = one.posed().recipe().feed().orElseThrow();
      for (int i = 0; i < one.due().size(); i++) {
        then.add(planned(one, i, one.due().get(i).kg(), feed));
      }
    }
    Ahead ahead = walk(then);
    return wanted.stream()
        .map(one -> one.sparing(i -> ahead.spared().getOrDefault(number(one, i), new TreeMap<>())))
        .toList();
  }

  /** What is to be bought for all that is made. */
  PurchaseList toBuy(SharedOut out) {
    List<Planned> all = new ArrayList<>(first);
    for (SharedFeed one : out.feeds()) {
      for (int i = 0; i < one.made().size() && one.settled().isPresent(); i++) {
        double kg = one.made().get(i).kg();
        if (kg > 0) {
          all.add(planned(one.wanted(), i, kg, one.settled().get().feed()));
        }
      }
    }
    return MaterialRequirements.of(
            all, shared.tables(), shared.resolver().premixes(), whole.stock(), day)
        .list();
  }

  private Planned planned(Wanted wanted, int due, double kg, ComputedFeed feed) {
    Due one = wanted.due().get(due);
    BatchRecord record = shared.tables().batches().get(one.batch());
    if (record != null) {
      ComputedFeed made =
          shared
              .recordCheck()
              .planned(feed, record)
              .map(BatchRecordCheck.Planned::feed)
              .orElse(feed);
      return Planned.of(record, target(made, kg));
    }
    double ofRecipe = wanted.isBagged() ? kg / feed.bagged() * WHOLE : kg;
    return new Planned(number(wanted, due), one.day(), target(feed, ofRecipe), Optional.empty());
  }

  /** Of a batch; a quantity is called by its feed and day, each by another name. */
  private static String number(Wanted wanted, int due) {
    Due one = wanted.due().get(due);
    long before = wanted.due().stream().limit(due).filter(it -> it.day().equals(one.day())).count();
    String called = wanted.code() + " of " + one.day();
    return one.isBatch() ? one.batch() : before == 0 ? called : called + ", " + (before + 1);
  }

  /** As the scales show it. */
  private BatchTarget target(ComputedFeed feed, double kg) {
    BatchPlan plan =
        BatchPlan.of(
            feed,
            List.of(),
            shared.tables(),
            new Provenance(Version.UNKNOWN.commit(), false, day),
            "",
            kg);
    return BatchTarget.of(feed, kg, Optional.empty()).weighing(Picking.weights(plan));
  }
}
