package dev.pellucid.engine.workspace;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How many feeds wait for a file, told at the first error in it. */
final class Waiting {
  private Waiting() {}

  /** The same findings, those for which feeds wait with how many do. */
  static List<Finding> told(List<Finding> findings, List<Summary> recipes) {
    Map<String, Integer> waiting = new HashMap<>();
    for (Summary recipe : recipes) {
      for (String file : recipe.mendFirst()) {
        waiting.merge(file, 1, Integer::sum);
      }
    }
    if (waiting.isEmpty()) {
      return findings;
    }
    Set<String> done = new HashSet<>();
    List<Finding> told = new ArrayList<>();
    for (Finding finding : findings.stream().sorted(FixOrder.ORDER).toList()) {
      String file = finding.span().file().fileName();
      int feeds = waiting.getOrDefault(file, 0);
      boolean first = finding.severity() == Severity.ERROR && feeds > 0 && done.add(file);
      told.add(
          first
              ? finding.noting(Plural.of(feeds, "feed waits", "feeds wait") + " for this file")
              : finding);
    }
    return told;
  }
}
