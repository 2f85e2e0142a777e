package dev.pellucid.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a laboratory is asked for. Of what nothing is told but that there may be some, nothing is
 * expected, and it is in none of the lists.
 *
 * @param first what is analysed of every batch, and what stands nearest to a limit
 * @param more what else an analysis of the feed finds
 * @param reckoned what no analysis of a feed finds: what fish digest, and ratios
 */
public record Analyses(
    List<Expectation> first, List<Expectation> more, List<Expectation> reckoned) {
  /** The usual analysis of a feed (common practice, no source). */
  private static final List<String> USUAL =
      List.of("moisture", "crude-protein", "crude-fat", "crude-ash", "crude-fibre", "phosphorus");

  private static final int NEAREST = 3;

  public Analyses {
    first = List.copyOf(first);
    more = List.copyOf(more);
    reckoned = List.copyOf(reckoned);
  }

  /** The same things in three lists. */
  public static Analyses of(List<Expectation> expected) {
    List<Expectation> found = new ArrayList<>();
    List<Expectation> reckoned = new ArrayList<>();
    for (Expectation one : expected) {
      if (!one.isNothingTold()) {
        (one.isFound() ? found : reckoned).add(one);
      }
    }
    List<Expectation> first = new ArrayList<>();
    for (String usual : USUAL) {
      found.stream().filter(one -> one.subject().equals(usual)).forEach(first::add);
    }
    found.removeAll(first);
    List<Expectation> nearest =
        found.stream()
            .sorted(Comparator.comparingDouble(Expectation::roomPercent))
            .limit(NEAREST)
            .toList();
    found.removeAll(nearest);
    first.addAll(nearest);
    return new Analyses(first, found, reckoned);
  }
}
