package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Nutrient.Formula.Term;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Nutrients that follow from themselves, by formula, as a digestible part or as a part of a whole:
 * each ring is one finding, and its members lose these ties, so that no later stage can run in a
 * ring.
 */
final class NutrientCycles {
  private final Map<String, Nutrient> nutrients = new LinkedHashMap<>();
  private final Map<String, Boolean> done = new HashMap<>();
  private final List<String> path = new ArrayList<>();
  private final Set<String> inRing = new HashSet<>();

  void add(Nutrient nutrient) {
    nutrients.put(nutrient.name(), nutrient);
  }

  /** The nutrients in their order, without rings. */
  List<Nutrient> broken(Remarks remarks) {
    for (String name : nutrients.keySet()) {
      walk(name, remarks);
    }
    List<Nutrient> broken = new ArrayList<>(nutrients.size());
    for (Nutrient nutrient : nutrients.values()) {
      broken.add(inRing.contains(nutrient.name()) ? loosened(nutrient) : nutrient);
    }
    return broken;
  }

  private void walk(String name, Remarks remarks) {
    Nutrient nutrient = nutrients.get(name);
    if (nutrient == null || done.containsKey(name) && Boolean.TRUE.equals(done.get(name))) {
      return;
    }
    int before = path.indexOf(name);
    if (before >= 0) {
      List<String> ring = new ArrayList<>(path.subList(before, path.size()));
      inRing.addAll(ring);
      ring.add(name);
      remarks.add(NutrientFindings.cycle(nutrient.declared(), ring));
      return;
    }
    path.add(name);
    for (String other : ties(nutrient)) {
      walk(other, remarks);
    }
    path.remove(path.size() - 1);
    done.put(name, true);
  }

  private static List<String> ties(Nutrient nutrient) {
    List<String> ties = new ArrayList<>();
    if (nutrient.formula().isPresent()) {
      for (Term term : nutrient.formula().get().terms()) {
        ties.add(term.nutrient());
      }
    }
    if (nutrient.digestibleOf().isPresent()) {
      ties.add(nutrient.digestibleOf().get());
    }
    if (nutrient.partOf().isPresent()) {
      ties.add(nutrient.partOf().get());
    }
    return ties;
  }

  private static Nutrient loosened(Nutrient nutrient) {
    return new Nutrient(
        nutrient.index(),
        nutrient.name(),
        nutrient.title(),
        nutrient.unit(),
        Optional.empty(),
        nutrient.ofTheWhole(),
        nutrient.whereTold(),
        nutrient.analysed(),
        nutrient.stability(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        nutrient.usualMinimum(),
        nutrient.usualMaximum(),
        nutrient.usual(),
        nutrient.declared());
  }
}
