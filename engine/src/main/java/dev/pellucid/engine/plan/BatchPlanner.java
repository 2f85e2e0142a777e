package dev.pellucid.engine.plan;

import dev.pellucid.engine.check.Verdict;
import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
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
  private final List<Verdict> verdicts;
  private final Larder larder;
  private final Provenance provenance;
  private final ResolvedRecipe recipe;

  /** Batches of 100 kg that this one is. */
  private final double times;

  BatchPlanner(ComputedFeed feed, List<Verdict> verdicts, Larder larder, Provenance provenance) {
    this.feed = feed;
    this.verdicts = verdicts;
    this.larder = larder;
    this.provenance = provenance;
    this.recipe = feed.recipe();
    this.times = recipe.batch().map(this::weighed).orElse(UNTOLD_KG) / 100;
  }

  private double weighed(BatchSize size) {
    return size.basis() == BatchBasis.WEIGHED ? size.kg() : size.kg() / feed.bagged() * 100;
  }

  BatchPlan plan() {
    Balance expected = feed.balances().expected();
    WeighList list = new WeighList(feed, times);
    MassBalance balance = balance(expected, list);
    return new BatchPlan(
        larder.settings().name(),
        recipe.code(),
        recipe.title(),
        recipe.status(),
        fish(),
        provenance,
        recipe.batch().isPresent(),
        draftBecause(),
        larder.practice().inspection(),
        list.lines(),
        new Cautions(feed, larder.practice()).ofMix(),
        new TaskList(feed, larder, times).inOrder(),
        balance,
        packing(balance),
        storing(),
        expected.moisture(),
        Expectations.of(feed, verdicts));
  }

  private List<String> fish() {
    List<String> words = new ArrayList<>();
    recipe.species().ifPresent(species -> words.add(species.title()));
    recipe.fish().ifPresent(size -> words.add(size.asWritten()));
    recipe.habit().ifPresent(words::add);
    return words;
  }

  private List<String> draftBecause() {
    List<String> reasons = new ArrayList<>();
    if (!recipe.status().equals("approved")) {
      reasons.add("the status of the recipe is " + recipe.status() + ", not approved");
    }
    if (provenance.commit().isEmpty()) {
      reasons.add("the recipe is in no commit");
    } else if (!provenance.clean()) {
      reasons.add("the folder holds changes that are not committed");
    }
    long broken = verdicts.stream().filter(verdict -> !verdict.keeps()).count();
    if (broken > 0) {
      reasons.add("limits not kept: " + broken);
    }
    return reasons;
  }

  private MassBalance balance(Balance expected, WeighList list) {
    double finished = expected.finished() * times;
    return new MassBalance(
        times * 100,
        list.lines().stream().mapToDouble(Weighed::handling).sum(),
        expected.mix() * times,
        expected.waterAdded() * times,
        expected.steam() * times,
        expected.evaporated() * times,
        expected.kernel() * times,
        expected.coat() * times,
        finished,
        finished * feed.shrink());
  }

  private Optional<Packing> packing(MassBalance balance) {
    return recipe
        .process()
        .setting(Step.PACK, Property.BAG)
        .map(Setting::aim)
        .filter(bag -> bag > 0)
        .map(bag -> Packing.of(balance.bagged(), bag));
  }

  /** Of a range of shelf lives the shorter counts. */
  private Optional<Storing> storing() {
    return recipe
        .process()
        .setting(Step.STORE, Property.SHELF_LIFE)
        .map(life -> (long) Math.floor(life.low() / HOURS_A_DAY + 1e-9))
        .map(days -> new Storing(days, provenance.day().plusDays(days)));
  }
}
