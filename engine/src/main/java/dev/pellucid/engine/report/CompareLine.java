package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.Found;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What became of a recipe in one line, for a console. */
final class CompareLine {
  private CompareLine() {}

  /** A feed in one line: {@code CG-36 edited: 1 error is new, the first: ...; cost ...}. */
  static String of(RecipeChange change, String currency) {
    List<String> parts = new ArrayList<>();
    if (!change.obstacle().isEmpty()) {
      parts.add("cannot be computed: " + change.obstacle());
    }
    String findings = CompareTally.of(change.findings(), change.isLost());
    if (!findings.isEmpty()) {
      String first =
          change.obstacle().isEmpty() && !change.findings().fresh().isEmpty()
              ? " (" + worst(change) + ")"
              : "";
      parts.add(findings + first);
    }
    Effect effect = change.effectOrNone();
    count(effect.broken().size(), "limit is broken", "limits are broken", parts);
    count(effect.untold().size(), "limit is not judged", "limits are not judged", parts);
    if (effect.breaksLabel()) {
      parts.add("label " + CompareWords.label(change));
    }
    if (CompareWords.passesByWaiver(change)) {
      parts.add(CompareWords.byWaiver(change));
    }
    if (!CompareMoney.costMoved(change).isEmpty()) {
      parts.add("cost " + CompareMoney.costMoved(change) + " " + currency + "/kg");
    }
    if (!change.printed().isNone() || !effect.reprint().isEmpty()) {
      parts.add("papers to print again");
    }
    return change.named()
        + "  "
        + change.how().words()
        + (parts.isEmpty() ? "" : ": " + String.join("; ", parts));
  }

  private static String worst(RecipeChange change) {
    return change.findings().fresh().stream()
        .min(Comparator.comparing(Found::severity))
        .map(Found::headline)
        .orElse("");
  }

  private static void count(int number, String one, String more, List<String> parts) {
    if (number > 0) {
      parts.add(Plural.of(number, one, more));
    }
  }
}
