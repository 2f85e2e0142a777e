package dev.pellucid.engine.goal;

import dev.pellucid.engine.compare.Found;
import dev.pellucid.engine.compare.PremixState;
import dev.pellucid.engine.compare.PremixState.Figures;
import dev.pellucid.engine.compare.PremixState.Supply;
import dev.pellucid.engine.compare.Printed;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.PremixOrders;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.plan.Weighed;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.workspace.Shared;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Takes down what the premixes of one state come to, as their sheets show them. */
final class PremixTaking {
  private final ComparedState state;
  private final Set<String> faulty;
  private final Map<String, List<Found>> found;
  private final Map<String, List<Premixing.Need>> needs = new TreeMap<>();

  /**
   * @param faulty paths of files with an error; no sheet is made of such a premix
   * @param found what the check says, by path
   */
  PremixTaking(ComparedState state, Set<String> faulty, Map<String, List<Found>> found) {
    this.state = state;
    this.faulty = faulty;
    this.found = found;
  }

  /** What one batch of a feed takes of each. */
  void takenBy(String code, List<Premixing.Need> of) {
    if (!of.isEmpty()) {
      needs.put(code, of);
    }
  }

  SortedMap<String, PremixState> states() {
    Shared shared = state.shared();
    Map<String, ResolvedPremix> sound = new TreeMap<>(shared.resolver().premixes());
    Map<String, String> paths = shared.trees().premixPaths();
    sound.keySet().removeIf(code -> faulty.contains(paths.getOrDefault(code, "")));
    PremixOrders orders = new PremixOrders(sound, needs, shared.tables());
    SortedMap<String, PremixState> states = new TreeMap<>();
    paths.forEach(
        (code, path) -> {
          Optional<ResolvedPremix> premix = Optional.ofNullable(sound.get(code));
          Optional<BatchPlan> plan =
              premix.flatMap(
                  one ->
                      BatchPlan.of(one, orders, shared.tables(), PrintedTaking.from(state.day())));
          states.put(
              code,
              new PremixState(
                  code,
                  path,
                  state.words(path),
                  shared.premixDependsOn(code, path)::on,
                  plan.map(one -> figures(one, premix.orElseThrow())),
                  plan.map(PrintedTaking::of).orElse(Printed.NONE),
                  found.getOrDefault(path, List.of())));
        });
    return states;
  }

  private Figures figures(BatchPlan plan, ResolvedPremix premix) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (Weighed line : plan.weighing()) {
      weights.merge(line.name(), line.total().asDouble(), Double::sum);
    }
    Map<String, Supply> supplies = new LinkedHashMap<>();
    plan.premixing()
        .ifPresent(
            made ->
                made.supplied()
                    .forEach(
                        one ->
                            supplies.put(
                                one.title(), new Supply(one.unit(), one.asked(), one.fresh()))));
    return new Figures(plan.balance().weighed().asDouble(), weights, supplies, cost(premix));
  }

  private OptionalDouble cost(ResolvedPremix premix) {
    Optional<ComputedFeed> made =
        new FeedComputer(state.shared().tables())
            .compute(premix.asRecipe("approved"))
            .feed()
            .map(ComputedFeed::withoutShrink)
            .filter(feed -> feed.unpriced().isEmpty());
    return made.isPresent() ? OptionalDouble.of(made.get().costPerKg()) : OptionalDouble.empty();
  }
}
