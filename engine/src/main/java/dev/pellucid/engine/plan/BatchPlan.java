package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.weighing.WeighingPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One batch of a feed or premix as the mill makes it: what to weigh, do, read and pack.
 *
 * @param house the name of the folder
 * @param jurisdiction whose law its feeds are judged by; empty where no law is
 * @param reviewed who looked at the figures it rests on, and when; empty where nobody is told
 * @param fish species, size and habit in words, as far as they are told
 * @param number of a batch that is planned under it; absent: the serial of the day is written by
 *     hand
 * @param sizeTold whether the size of the batch is told; else it is 100 kg weighed
 * @param draftBecause why it is not to be made from this sheet; empty when it may be
 * @param inspection what to look at before anything is weighed
 * @param line what is or may be made before it on the same line
 * @param weighing mix and coat in the order of the recipe
 * @param fromStore which lots were chosen, and what the store lacks
 * @param scales the batch as the plant weighs it; absent where the plant tells no scales
 * @param premixCodes those of the lines that are premixes made here
 * @param mixCautions where the lines of the mix are weighed
 * @param tasks in the order of the work; the coat stands at its place
 * @param premixing what only a premix has
 * @param rebalanced that it has other shares than its recipe; empty where it has not
 */
public record BatchPlan(
    String house,
    Optional<String> jurisdiction,
    String code,
    String title,
    String status,
    Optional<String> reviewed,
    List<String> fish,
    Provenance provenance,
    Optional<String> number,
    boolean sizeTold,
    List<String> draftBecause,
    List<String> inspection,
    OnTheLine line,
    List<Weighed> weighing,
    FromStore fromStore,
    Optional<OnScales> scales,
    List<String> premixCodes,
    List<Caution> mixCautions,
    List<Task> tasks,
    MassBalance balance,
    Optional<Packing> packing,
    Optional<Storing> storing,
    double moisture,
    List<Expectation> expected,
    List<Waived> waived,
    Optional<Premixing> premixing,
    Optional<Rebalanced> rebalanced) {
  public BatchPlan {
    fish = List.copyOf(fish);
    draftBecause = List.copyOf(draftBecause);
    inspection = List.copyOf(inspection);
    weighing = List.copyOf(weighing);
    premixCodes = List.copyOf(premixCodes);
    mixCautions = List.copyOf(mixCautions);
    tasks = List.copyOf(tasks);
    expected = List.copyOf(expected);
    waived = List.copyOf(waived);
  }

  /** The plan of a batch of the size that the recipe names. */
  public static BatchPlan of(
      ComputedFeed feed, List<LimitStatus> limits, FeedTables tables, Provenance provenance) {
    return new BatchPlanner(feed, limits, tables, provenance).feed();
  }

  /**
   * The same without what a laboratory should find, where the batch is planned on the scales
   * already.
   */
  public static BatchPlan ofWork(
      ComputedFeed feed,
      List<LimitStatus> limits,
      FeedTables tables,
      Provenance provenance,
      Optional<WeighingPlan> floor) {
    return new BatchPlanner(feed, limits, tables, provenance).work(floor);
  }

  /** What is weighed out for such a batch, and no more of its plan. */
  public static List<Weighed> weighing(ComputedFeed feed, FeedTables tables) {
    return BatchPlanner.weighing(feed, tables);
  }

  /** The plan of a batch that is written down under a number, of a size of its own. */
  public static BatchPlan of(
      ComputedFeed feed,
      List<LimitStatus> limits,
      FeedTables tables,
      Provenance provenance,
      String number,
      double kg) {
    return new BatchPlanner(feed, limits, tables, provenance).feed(number, kg);
  }

  /** The same with lots to take. */
  public BatchPlan from(FromStore store) {
    return with(
        provenance,
        draftBecause,
        weighing.stream().map(line -> line.from(store.cell(line.name()))).toList(),
        store,
        scales.map(plan -> plan.from(store::cell)),
        rebalanced,
        line);
  }

  /** The same with the fingerprint of all files that it hangs on. */
  public BatchPlan madeFrom(String fingerprint) {
    return with(
        provenance.with(fingerprint), draftBecause, weighing, fromStore, scales, rebalanced, line);
  }

  /** The same of a batch that has other shares than its recipe. */
  public BatchPlan rebalanced(Rebalanced told) {
    List<String> reasons = new ArrayList<>(draftBecause);
    reasons.addAll(told.draftBecause());
    return with(provenance, reasons, weighing, fromStore, scales, Optional.of(told), line);
  }

  /** The same of a batch before which the line is to be clean. */
  public BatchPlan toClean(String why) {
    return with(
        provenance, draftBecause, weighing, fromStore, scales, rebalanced, line.toClean(why));
  }

  private BatchPlan with(
      Provenance from,
      List<String> reasons,
      List<Weighed> lines,
      FromStore store,
      Optional<OnScales> loads,
      Optional<Rebalanced> told,
      OnTheLine onLine) {
    return new BatchPlan(
        house,
        jurisdiction,
        code,
        title,
        status,
        reviewed,
        fish,
        from,
        number,
        sizeTold,
        reasons,
        inspection,
        onLine,
        lines,
        store,
        loads,
        premixCodes,
        mixCautions,
        tasks,
        balance,
        packing,
        storing,
        moisture,
        expected,
        waived,
        premixing,
        told);
  }

  /** The plan of a premix for what is ordered of it; empty where its mass cannot be reckoned. */
  public static Optional<BatchPlan> of(
      ResolvedPremix premix, PremixOrders orders, FeedTables tables, Provenance provenance) {
    return new PremixPlanner(premix, orders, tables).plan(provenance);
  }

  /** The plan of a batch of a premix that is written down under a number. */
  public static Optional<BatchPlan> of(
      ResolvedPremix premix,
      PremixOrders orders,
      FeedTables tables,
      Provenance provenance,
      String number,
      double kg) {
    return new PremixPlanner(premix, orders, tables).plan(provenance, number, kg);
  }

  /** The last day on which it may be made, where a limit is waived only until then. */
  public Optional<LocalDate> makeBy() {
    return waived.stream().map(Waived::until).min(Comparator.naturalOrder());
  }

  /** Whether the feed must not be made from this sheet. */
  public boolean draft() {
    return !draftBecause.isEmpty();
  }

  /** Lines of the mix from the large scale, dry. */
  public List<Weighed> dryLines() {
    return of(line -> line.place() == Place.MIX && !line.micro() && !line.liquid());
  }

  /** Lines of the mix that are weighed apart. */
  public List<Weighed> microLines() {
    return of(line -> line.place() == Place.MIX && line.micro());
  }

  /** Lines of the mix that go in last and slowly. */
  public List<Weighed> liquidLines() {
    return of(line -> line.place() == Place.MIX && !line.micro() && line.liquid());
  }

  /** Every line of the mix. */
  public List<Weighed> mixLines() {
    return of(line -> line.place() == Place.MIX);
  }

  /** Every line of the coat. */
  public List<Weighed> allCoatLines() {
    return of(line -> line.place() == Place.COAT);
  }

  /** Lines of the coat from the large scale. */
  public List<Weighed> coatLines() {
    return of(line -> line.place() == Place.COAT && !line.micro());
  }

  /** Lines of the coat that are weighed apart. */
  public List<Weighed> smallCoatLines() {
    return of(line -> line.place() == Place.COAT && line.micro());
  }

  /** Whether anything but the recipe shares is weighed. */
  public boolean hasOverage() {
    return weighing.stream().anyMatch(line -> !line.extra().isZero());
  }

  private List<Weighed> of(Predicate<Weighed> kind) {
    return weighing.stream().filter(kind).toList();
  }

  /** Several lines together. */
  public static Weighed.Sum sum(List<Weighed> lines) {
    return Weighed.Sum.of(lines);
  }

  /** In how many loads it is mixed. */
  public int loads() {
    return scales.map(OnScales::loads).orElse(1);
  }

  /** The part of a mass that each load takes. */
  public Mass eachLoad(Mass whole) {
    return Mass.of(whole.asDouble() / loads(), whole.kg().scale());
  }
}
