package dev.pellucid.engine.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Recipes that stand in the folder under another code than before: those that kept their words. */
final class Renames {
  /** As many lines in a hundred as must be the same. */
  private static final double ALIKE = 0.6;

  private Renames() {}

  private record Pair(String before, String after, double alike) {}

  /** Codes before by codes after. */
  static Map<String, String> between(
      Map<String, RecipeState> before, Map<String, RecipeState> after) {
    Set<String> gone = new TreeSet<>(before.keySet());
    gone.removeAll(after.keySet());
    Set<String> fresh = new TreeSet<>(after.keySet());
    fresh.removeAll(before.keySet());
    Map<String, List<String>> words = new TreeMap<>();
    before.values().stream()
        .filter(one -> gone.contains(one.code()))
        .forEach(one -> words.put(one.code(), Wording.nameless(one)));
    after.values().stream()
        .filter(one -> fresh.contains(one.code()))
        .forEach(one -> words.put(one.code(), Wording.nameless(one)));
    Map<String, String> formerly = new TreeMap<>();
    for (Pair pair : pairs(gone, fresh, words)) {
      if (gone.contains(pair.before()) && fresh.contains(pair.after())) {
        formerly.put(pair.after(), pair.before());
        gone.remove(pair.before());
        fresh.remove(pair.after());
      }
    }
    return formerly;
  }

  /** The most alike first. */
  private static List<Pair> pairs(
      Set<String> gone, Set<String> fresh, Map<String, List<String>> words) {
    List<Pair> pairs = new ArrayList<>();
    for (String old : gone) {
      for (String now : fresh) {
        double alike =
            alike(words.getOrDefault(old, List.of()), words.getOrDefault(now, List.of()));
        if (alike >= ALIKE) {
          pairs.add(new Pair(old, now, alike));
        }
      }
    }
    pairs.sort(
        Comparator.comparingDouble(Pair::alike)
            .reversed()
            .thenComparing(Pair::before)
            .thenComparing(Pair::after));
    return pairs;
  }

  /** The lines that both have, as a part of the longer one. */
  private static double alike(List<String> lines, List<String> other) {
    List<String> left = new ArrayList<>(other);
    int longer = Math.max(lines.size(), left.size());
    long shared = lines.stream().filter(left::remove).count();
    return longer == 0 ? 0 : (double) shared / longer;
  }
}
