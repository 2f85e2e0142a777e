package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Feeds that are above a cap that is itself in doubt: they are named at that cap, and only there.
 */
final class CapsInDoubt {
  private static final int NAMED = 8;

  private CapsInDoubt() {}

  /** The same findings, with what follows from such a cap told there. */
  static List<Finding> fold(List<Finding> findings) {
    Map<Span, Set<String>> above = new HashMap<>();
    for (Finding finding : findings) {
      if (TablesReader.isCapInDoubt(finding)) {
        above.put(finding.span(), new TreeSet<>());
      }
    }
    if (above.isEmpty()) {
      return findings;
    }
    List<Finding> left = new ArrayList<>();
    for (Finding finding : findings) {
      if (!Rules.isAboveCap(finding) || !isTaken(finding, above)) {
        left.add(finding);
      }
    }
    left.replaceAll(finding -> told(finding, above.getOrDefault(finding.span(), Set.of())));
    return left;
  }

  private static boolean isTaken(Finding aboveCap, Map<Span, Set<String>> above) {
    for (Related place : aboveCap.related()) {
      Set<String> feeds = above.get(place.span());
      if (feeds != null) {
        feeds.add(aboveCap.span().file().stem());
        return true;
      }
    }
    return false;
  }

  private static Finding told(Finding finding, Set<String> feeds) {
    if (feeds.isEmpty() || !TablesReader.isCapInDoubt(finding)) {
      return finding;
    }
    List<String> named = new ArrayList<>(feeds).subList(0, Math.min(NAMED, feeds.size()));
    return finding.noting(
        "as it stands "
            + (feeds.size() > NAMED
                ? feeds.size() + " feeds hold"
                : Choices.all(named) + (feeds.size() == 1 ? " holds" : " hold"))
            + " more");
  }
}
