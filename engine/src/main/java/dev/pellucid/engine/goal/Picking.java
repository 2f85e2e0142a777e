package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.FromStore;
import dev.pellucid.engine.plan.FromStore.Lacking;
import dev.pellucid.engine.plan.FromStore.Split;
import dev.pellucid.engine.plan.FromStore.Taken;
import dev.pellucid.engine.plan.Weighed;
import dev.pellucid.engine.records.FirstExpiredFirstOut;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.records.GoesInto;
import dev.pellucid.engine.records.MaterialRequirements.Ahead;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which lots a batch takes. A planned batch takes what the walk over all planned batches gives it.
 * Any other is reckoned after all of these, as if it were the next to be made of what they leave.
 */
final class Picking {
  private final FeedTables tables;
  private final Map<String, ResolvedPremix> premixes;
  private final Ahead ahead;

  Picking(FeedTables tables, Map<String, ResolvedPremix> premixes, Ahead ahead) {
    this.tables = tables;
    this.premixes = premixes;
    this.ahead = ahead;
  }

  /** A plan with lots to take of what the planned batches leave. */
  BatchPlan into(BatchPlan plan, GoesInto into) {
    Map<String, FirstExpiredFirstOut> chosen = new LinkedHashMap<>();
    weights(plan)
        .forEach((name, kg) -> choice(name, kg, into).ifPresent(it -> chosen.put(name, it)));
    return plan.from(store(plan, chosen, ahead.list().batches().size()));
  }

  /** The plan of a planned batch, with what it takes. */
  BatchPlan into(BatchPlan plan, BatchRecord record) {
    return plan.from(store(plan, ahead.of(record.number()), 0));
  }

  /** kg of each line that no lot is written into, by its name. */
  static Map<String, Double> weights(BatchPlan plan) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (Weighed line : plan.weighing()) {
      weights.merge(line.name(), line.total().asDouble(), Double::sum);
    }
    return weights;
  }

  private FromStore store(
      BatchPlan plan, Map<String, FirstExpiredFirstOut> chosen, int afterPlanned) {
    Map<String, List<Taken>> lots = new LinkedHashMap<>();
    List<Split> splits = new ArrayList<>();
    List<Lacking> lacking = new ArrayList<>();
    Map<String, String> titles = new LinkedHashMap<>();
    plan.weighing().forEach(line -> titles.putIfAbsent(line.name(), line.title()));
    Set<String> open =
        plan.weighing().stream()
            .filter(line -> line.lot().isEmpty())
            .map(Weighed::name)
            .collect(Collectors.toSet());
    titles.forEach(
        (name, title) ->
            Optional.ofNullable(chosen.get(name))
                .ifPresent(
                    choice -> {
                      List<Taken> taken = taken(choice.picks());
                      lots.put(name, taken);
                      if (taken.size() > 1 && open.contains(name)) {
                        splits.add(new Split(title, taken));
                      }
                      if (choice.shortfall() > 0) {
                        lacking.add(new Lacking(title, choice.shortfall(), choice.passedOver()));
                      }
                    }));
    return new FromStore(lots, splits, lacking, afterPlanned);
  }

  private Optional<FirstExpiredFirstOut> choice(String name, double kg, GoesInto into) {
    ResolvedPremix premix = premixes.get(name);
    if (premix != null) {
      return FirstExpiredFirstOut.of(premix, kg, into, tables, ahead.left());
    }
    Ingredient ingredient = tables.ingredients().get(name);
    return ingredient == null
        ? Optional.empty()
        : FirstExpiredFirstOut.of(ingredient, kg, into, tables, ahead.left());
  }

  private List<Taken> taken(List<Pick> picks) {
    return picks.stream().map(this::taken).toList();
  }

  private Taken taken(Pick pick) {
    BatchRecord batch = tables.batches().get(pick.number());
    boolean planned = batch != null && batch.isPlanned();
    return new Taken(pick.number(), pick.bin(), pick.lots(), pick.kg(), planned);
  }
}
