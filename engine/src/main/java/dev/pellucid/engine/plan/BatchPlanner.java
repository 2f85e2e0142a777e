package dev.pellucid.engine.plan;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Scales a feed, reckoned per 100 kg of recipe, to one batch. A batch told as finished is solved
 * back through yield and shrink to what is weighed.
 */
final class BatchPlanner {
  private static final double UNTOLD_KG = 100;
  private static final double HOURS_A_DAY = 24;

  private final ComputedFeed feed;
  private final List<LimitStatus> limits;
  private final FeedTables tables;
  private final Provenance provenance;
  private final ResolvedRecipe recipe;

  BatchPlanner(
      ComputedFeed feed, List<LimitStatus> limits, FeedTables tables, Provenance provenance) {
    this.feed = feed;
    this.limits = limits;
    this.tables = tables;
    this.provenance = provenance;
    this.recipe = feed.recipe();
  }

  BatchPlan feed() {
    Optional<WeighingPlan> floor = WeighingPlanner.plan(feed, weighed(feed), tables);
    return feed(floor, expected(floor));
  }

  /** Without what is expected of it. */
  BatchPlan work(Optional<WeighingPlan> floor) {
    boolean planned = recipe.batch().isPresent();
    return feed(planned ? floor : WeighingPlanner.plan(feed, UNTOLD_KG, tables), List.of());
  }

  private BatchPlan feed(Optional<WeighingPlan> floor, List<Expectation> expected) {
    Optional<Double> finished =
        recipe.batch().filter(size -> size.basis() == BatchBasis.FINISHED).map(BatchSize::kg);
    return plan(
        Optional.empty(),
        weighed(feed),
        floor,
        expected,
        finished,
        recipe.batch().isPresent(),
        draftBecause(),
        Optional.empty());
  }

  private List<Expectation> expected(Optional<WeighingPlan> floor) {
    ComputedFeed asWeighed = floor.flatMap(this::asWeighed).orElse(feed);
    return Expectations.of(Held.all(floor.isPresent() ? Judge.limits(asWeighed) : limits));
  }

  /** What goes onto the scales by the size that the recipe names. */
  private static double weighed(ComputedFeed feed) {
    return feed.recipe().batch().map(feed::weighed).orElse(UNTOLD_KG);
  }

  BatchPlan feed(String number, double weighed) {
    Optional<WeighingPlan> floor = WeighingPlanner.plan(feed, weighed, tables);
    return plan(
        Optional.of(number),
        weighed,
        floor,
        expected(floor),
        Optional.empty(),
        true,
        draftBecause(),
        Optional.empty());
  }

  BatchPlan premix(double weighed, Premixing premixing) {
    return premix(Optional.empty(), weighed, !premixing.needs().isEmpty(), premixing);
  }

  /** One that is planned under a number, of a size of its own. */
  BatchPlan premix(String number, double weighed, Premixing premixing) {
    return premix(Optional.of(number), weighed, true, premixing);
  }

  private BatchPlan premix(
      Optional<String> number, double weighed, boolean sizeTold, Premixing premixing) {
    List<String> reasons = new ArrayList<>();
    if (premixing.needs().isEmpty()) {
      reasons.add("no approved recipe of this folder holds it");
    }
    reasons.addAll(uncommitted());
    Optional<WeighingPlan> floor = WeighingPlanner.plan(feed, weighed, tables);
    return plan(
        number,
        weighed,
        floor,
        expected(floor),
        Optional.empty(),
        sizeTold,
        reasons,
        Optional.of(premixing));
  }

  private BatchPlan plan(
      Optional<String> number,
      double weighed,
      Optional<WeighingPlan> floor,
      List<Expectation> expected,
      Optional<Double> finished,
      boolean sizeTold,
      List<String> draftBecause,
      Optional<Premixing> premixing) {
    Optional<OnScales> scales = scales(feed, floor);
    WeighList list = new WeighList(feed, weighed, scales);
    Cautions cautions = new Cautions(feed, tables.practice());
    List<Caution> mixCautions = cautions.ofMix();
    Optional<Mass> bagged = finished.map(kg -> Mass.of(kg, list.decimals()));
    Optional<Mass> wanted = bagged.map(kg -> kg.plus(shrunk(kg)));
    List<Task> tasks =
        new TaskList(feed, tables, cautions, list, scales, weighed / 100, wanted).inOrder();
    MassBalance balance = MassBalance.of(list, tasks, feed.shrink(), bagged);
    return new BatchPlan(
        tables.settings().name(),
        tables.settings().jurisdiction(),
        recipe.code(),
        recipe.title(),
        recipe.status(),
        recipe.reviewed().map(ResolvedRecipe.Reviewed::words),
        fish(),
        provenance,
        number,
        sizeTold,
        draftBecause,
        tables.practice().inspection(),
        OnTheLine.of(feed, tables, number),
        list.lines(),
        FromStore.UNKNOWN,
        scales,
        premixCodes(),
        mixCautions,
        tasks,
        balance,
        packing(balance),
        storing(),
        feed.balances().expected().moisture(),
        expected,
        Expectations.waived(limits),
        premixing,
        Optional.empty());
  }

  private static Optional<OnScales> scales(ComputedFeed feed, Optional<WeighingPlan> floor) {
    return floor.map(plan -> ScalePlanner.plan(feed, plan));
  }

  /** What is weighed out for the size that the recipe names. */
  static List<Weighed> weighing(ComputedFeed feed, FeedTables tables) {
    double kg = weighed(feed);
    Optional<WeighingPlan> floor = WeighingPlanner.plan(feed, kg, tables);
    return new WeighList(feed, kg, scales(feed, floor)).lines();
  }

  /** The feed of what the scales show: rounded, with overage as often as it is weighed out. */
  private Optional<ComputedFeed> asWeighed(WeighingPlan floor) {
    return feed.weighed(floor.asRounded(recipe)).feed();
  }

  /** What is lost beside so much in the bags. */
  private Mass shrunk(Mass bagged) {
    double kg = bagged.asDouble() * feed.shrink() / (1 - feed.shrink());
    return Mass.of(kg, bagged.kg().scale());
  }

  private List<String> premixCodes() {
    return recipe.taken().stream()
        .map(Line::material)
        .filter(material -> material.premixed().isPresent())
        .map(Material::name)
        .toList();
  }

  private List<String> fish() {
    List<String> words = new ArrayList<>();
    recipe.species().ifPresent(species -> words.add(species.title()));
    recipe.fish().ifPresent(size -> words.add(size.asWritten()));
    recipe.habit().ifPresent(habit -> words.add(habit.text()));
    return words;
  }

  private List<String> draftBecause() {
    List<String> reasons = new ArrayList<>();
    if (!recipe.status().equals("approved")) {
      reasons.add("the status of the recipe is " + recipe.status() + ", not approved");
    }
    reasons.addAll(uncommitted());
    long broken = limits.stream().filter(one -> !one.state().isKept()).count();
    if (broken > 0) {
      reasons.add("limits not kept: " + broken);
    }
    return reasons;
  }

  private List<String> uncommitted() {
    if (provenance.commit().isEmpty()) {
      return List.of("the file is in no commit");
    }
    return provenance.clean()
        ? List.of()
        : List.of("the folder holds changes that are not committed");
  }

  private Optional<Packing> packing(MassBalance balance) {
    return recipe
        .process()
        .setting(Step.PACK, Property.BAG)
        .map(Setting::aim)
        .filter(bag -> bag > 0)
        .map(BigDecimal::valueOf)
        .map(bag -> Packing.of(balance.bagged(), bag.stripTrailingZeros()));
  }

  /** Of a range of shelf lives the shorter counts. */
  private Optional<Storing> storing() {
    return recipe
        .process()
        .setting(Step.STORE, Property.SHELF_LIFE)
        .map(life -> (long) Closeness.down(life.low() / HOURS_A_DAY))
        .map(days -> new Storing(days, provenance.day().plusDays(days)));
  }
}
