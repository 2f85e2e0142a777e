package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.PremixOnScales;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.plan.PremixOrders;
import dev.pellucid.engine.plan.PremixPlanner;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.weighing.WeighingLine;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** The batches of premixes that the approved recipes of a folder ask for, on the plant's scales. */
final class PremixBatches {
  private PremixBatches() {}

  /** What a batch of a recipe takes of each premix; nothing where it is not to be made. */
  static Map<String, Double> takes(Checked recipe) {
    if (recipe.recipe().isEmpty() || !recipe.isSound()) {
      return Map.of();
    }
    RuleContext told = recipe.recipe().get();
    if (!told.recipe().status().equals("approved") || told.floor().plan().isEmpty()) {
      return Map.of();
    }
    WeighingPlan plan = told.floor().plan().get();
    Map<String, Double> takes = new TreeMap<>();
    add(plan.mix(), plan.loadCount(), takes);
    add(plan.coat(), plan.coatRounds(), takes);
    return takes;
  }

  private static void add(List<WeighingLine> lines, int times, Map<String, Double> takes) {
    for (WeighingLine line : lines) {
      if (line.line().material().premixed().isPresent()) {
        takes.merge(line.line().material().name(), line.target() * times, Double::sum);
      }
    }
  }

  /**
   * What is wrong with them.
   *
   * @param faulty paths of files with an error; no sheet is made of such a premix
   * @param told what is known already
   */
  static List<Finding> findings(
      Shared shared, List<Summary> recipes, Set<String> faulty, List<Finding> told) {
    Map<String, ResolvedPremix> sound = new TreeMap<>(shared.resolver().premixes());
    sound.values().removeIf(one -> faulty.contains(one.declared().file().path()));
    Map<String, List<Premixing.Need>> needs = new TreeMap<>();
    for (Summary recipe : recipes) {
      List<Premixing.Need> its = new ArrayList<>();
      recipe.takes().forEach((code, kg) -> its.add(Premixing.Need.of(code, kg)));
      needs.put(recipe.code(), its);
    }
    PremixOrders orders = new PremixOrders(sound, needs, shared.tables());
    Map<String, AtPlant> plants = new TreeMap<>();
    for (ResolvedPremix premix : sound.values()) {
      OptionalDouble kg = orders.made(premix);
      Optional<WeighingPlanner> planner = shared.planner(premix.plant());
      Optional<ComputedFeed> feed =
          kg.isPresent() && planner.isPresent()
              ? PremixPlanner.feed(premix, shared.tables())
              : Optional.empty();
      if (feed.isPresent()) {
        Plant plant = planner.get().plant();
        Optional<WeighingPlan> plan = planner.get().plan(feed.get(), kg.getAsDouble());
        if (plan.isPresent()) {
          plants
              .computeIfAbsent(plant.name(), none -> new AtPlant(plant, new ArrayList<>()))
              .batches()
              .add(new PremixOnScales.Batch(premix, plan.get()));
        }
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (AtPlant one : plants.values()) {
      findings.addAll(PremixOnScales.findings(one.batches(), one.plant(), told));
    }
    return findings;
  }

  /** The premixes that one plant makes. */
  private record AtPlant(Plant plant, List<PremixOnScales.Batch> batches) {}
}
