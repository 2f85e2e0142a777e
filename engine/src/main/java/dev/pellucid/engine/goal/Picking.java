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
import dev.pellucid.engine.records.Stock;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which lots a batch takes: those that its record names, else those of the store that expire first.
 * Each sheet is reckoned by itself, as if it were the next to be made.
 */
final class Picking {
  private final FeedTables tables;
  private final Map<String, ResolvedPremix> premixes;
  private final Stock stock;

  Picking(FeedTables tables, Map<String, ResolvedPremix> premixes, Stock stock) {
    this.tables = tables;
    this.premixes = premixes;
    this.stock = stock;
  }

  /** A plan with lots to take. */
  BatchPlan into(BatchPlan plan) {
    return plan.from(store(plan, Map.of()));
  }

  /** The plan of a batch that is written down, with the lots that it names and others to take. */
  BatchPlan into(BatchPlan plan, BatchRecord record) {
    Map<String, List<String>> named = new LinkedHashMap<>();
    for (BatchRecord.Entry entry : record.entries()) {
      if (!entry.lot().isEmpty()) {
        named.computeIfAbsent(entry.line(), line -> new ArrayList<>()).add(entry.lot());
      }
    }
    return plan.from(store(plan, named));
  }

  private FromStore store(BatchPlan plan, Map<String, List<String>> named) {
    Map<String, List<String>> lots = new LinkedHashMap<>(named);
    List<Split> splits = new ArrayList<>();
    List<Lacking> lacking = new ArrayList<>();
    Map<String, Double> wanted = new LinkedHashMap<>();
    Map<String, String> titles = new LinkedHashMap<>();
    for (Weighed line : plan.weighing()) {
      if (line.lot().isEmpty() && !named.containsKey(line.name())) {
        wanted.merge(line.name(), line.total().asDouble(), Double::sum);
        titles.put(line.name(), line.title());
      }
    }
    wanted.forEach(
        (name, kg) ->
            choice(name, kg, plan.provenance().day())
                .ifPresent(
                    choice -> {
                      lots.put(name, choice.picks().stream().map(Pick::number).toList());
                      if (choice.picks().size() > 1) {
                        splits.add(
                            new Split(titles.getOrDefault(name, name), taken(choice.picks())));
                      }
                      if (choice.shortfall() > 0) {
                        lacking.add(
                            new Lacking(titles.getOrDefault(name, name), choice.shortfall()));
                      }
                    }));
    return new FromStore(lots, splits, lacking);
  }

  private Optional<FirstExpiredFirstOut> choice(String name, double kg, LocalDate day) {
    ResolvedPremix premix = premixes.get(name);
    if (premix != null) {
      return FirstExpiredFirstOut.of(premix, kg, day, tables, stock);
    }
    Ingredient ingredient = tables.ingredients().get(name);
    return ingredient == null
        ? Optional.empty()
        : FirstExpiredFirstOut.of(ingredient, kg, day, tables, stock);
  }

  private static List<Taken> taken(List<Pick> picks) {
    return picks.stream().map(pick -> new Taken(pick.number(), pick.kg())).toList();
  }
}
