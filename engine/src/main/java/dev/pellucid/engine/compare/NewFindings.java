package dev.pellucid.engine.compare;

import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Refuses a change for what its check says anew. */
public final class NewFindings {
  private NewFindings() {}

  /**
   * A sentence; empty where nothing so grave is new.
   *
   * @param least the mildest severity that counts
   */
  public static Optional<String> refused(Comparison comparison, Severity least) {
    List<String> counts = new ArrayList<>();
    int all = 0;
    for (Severity severity : Severity.values()) {
      int fresh = severity.compareTo(least) <= 0 ? comparison.fresh(severity) : 0;
      if (fresh > 0) {
        counts.add(Plural.of(fresh, severity.word()));
      }
      all += fresh;
    }
    String are = all == 1 ? " is new, in " : " are new, the first in ";
    return gravest(comparison)
        .filter(first -> first.severity().compareTo(least) <= 0)
        .map(
            first ->
                String.join(" and ", counts)
                    + are
                    + first.path()
                    + ", line "
                    + first.line()
                    + ": "
                    + first.headline());
  }

  private static Optional<Found> gravest(Comparison comparison) {
    List<FindingsMoved> all = new ArrayList<>();
    comparison.files().forEach(one -> all.add(one.findings()));
    comparison.premixes().forEach(one -> all.add(one.findings()));
    comparison.changes().forEach(one -> all.add(one.findings()));
    Optional<Found> gravest = Optional.empty();
    for (FindingsMoved moved : all) {
      for (Found one : moved.fresh()) {
        if (gravest.isEmpty() || one.severity().compareTo(gravest.get().severity()) < 0) {
          gravest = Optional.of(one);
        }
      }
    }
    return gravest;
  }
}
