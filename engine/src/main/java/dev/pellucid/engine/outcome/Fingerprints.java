package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Fingerprint;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * By what each finding of a run is known again. Several with the same fingerprint are counted, in
 * the order in which they stand in the file.
 */
final class Fingerprints {
  private final IdentityHashMap<Finding, String> byFinding = new IdentityHashMap<>();

  /**
   * @param findings all of a run, in the order of printing
   */
  Fingerprints(List<Finding> findings) {
    Map<String, Integer> seen = new HashMap<>();
    for (Finding finding : findings) {
      String known = Fingerprint.of(finding);
      int number = seen.merge(known, 1, Integer::sum);
      byFinding.put(finding, number == 1 ? known : known + "|" + number);
    }
  }

  String of(Finding finding) {
    String fingerprint = byFinding.get(finding);
    if (fingerprint == null) {
      throw new IllegalArgumentException("not a finding of this run: " + finding.span());
    }
    return fingerprint;
  }
}
