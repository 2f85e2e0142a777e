package dev.pellucid.engine.data;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A digestible nutrient without {@code stands-in}, where all its sisters, the digestible parts of
 * other parts of the same whole, have one and the same: its line was most likely lost, and every
 * feed would say that it is not told how much is digested.
 */
final class StandInSisters {
  static final Code CODE = new Code("data-stands-in-lost");

  /** Fewer sisters than these say nothing. */
  private static final int ENOUGH = 2;

  private StandInSisters() {}

  static void look(Collection<Nutrient> nutrients, Remarks remarks) {
    Map<String, Nutrient> byName = new HashMap<>();
    nutrients.forEach(one -> byName.put(one.name(), one));
    Map<String, Map<Nutrient, Optional<String>>> byWhole = new LinkedHashMap<>();
    for (Nutrient one : nutrients) {
      Nutrient of = byName.get(one.digestibleOf().orElse(""));
      if (of != null && of.partOf().isPresent()) {
        byWhole
            .computeIfAbsent(of.partOf().get(), whole -> new LinkedHashMap<>())
            .put(one, one.standsIn());
      }
    }
    byWhole.values().forEach(sisters -> look(sisters, remarks));
  }

  private static void look(Map<Nutrient, Optional<String>> sisters, Remarks remarks) {
    TreeSet<String> told = new TreeSet<>();
    sisters.values().forEach(one -> one.ifPresent(told::add));
    List<Nutrient> silent =
        sisters.keySet().stream().filter(one -> one.standsIn().isEmpty()).toList();
    int others = sisters.size() - 1;
    if (silent.size() == 1 && told.size() == 1 && others >= ENOUGH) {
      Nutrient one = silent.get(0);
      remarks.add(
          Finding.warning(
                  CODE,
                  one.declared(),
                  one.name()
                      + " has no stands-in, the "
                      + others
                      + " other digestible parts beside it have "
                      + told.first())
              .noting("an ingredient that tells no coefficient of its own is then not judged on it")
              .helping("add stands-in: " + told.first() + ", as the others have it"));
    }
  }
}
