package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.check.SmallestChange.Step;
import dev.pellucid.engine.leastcost.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a person should know before signing for other shares. */
final class Cautions {
  private Cautions() {}

  static List<String> of(List<Step> steps, List<Refusal> refusals) {
    List<String> words = new ArrayList<>();
    for (Step step : steps) {
      if (step.line().within().isEmpty() && !step.line().rest()) {
        words.add(
            step.line().material().name()
                + " tells no within, and moves because -Dpellucid.free names it: whoever answers for"
                + " the recipe should agree");
      }
    }
    Map<String, List<Refusal>> byName = new LinkedHashMap<>();
    for (Refusal one : refusals) {
      byName.computeIfAbsent(one.ingredient(), none -> new ArrayList<>()).add(one);
    }
    byName.forEach((name, all) -> words.add(held(name, all)));
    return words;
  }

  private static String held(String name, List<Refusal> all) {
    return name
        + " was not raised: "
        + all.get(0).file()
        + ": "
        + all.get(0).missing()
        + (all.size() > 1 ? ", and " + (all.size() - 1) + " more" : "");
  }
}
