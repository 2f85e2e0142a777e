package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One finding of a check with what it is known by, those let pass by a waiver among them.
 *
 * @param waived the waiver, where one lets it pass
 */
record ReportedFinding(Finding finding, String fingerprint, Optional<WaivedFinding> waived) {

  /** All of a check, in the order of printing. */
  static List<ReportedFinding> of(CheckOutcome outcome) {
    List<ReportedFinding> all = new ArrayList<>();
    outcome
        .findings()
        .forEach(finding -> all.add(new ReportedFinding(finding, "", Optional.empty())));
    outcome
        .waived()
        .forEach(one -> all.add(new ReportedFinding(one.finding(), "", Optional.of(one))));
    all.sort(Comparator.comparing(ReportedFinding::finding));
    Fingerprints fingerprints =
        new Fingerprints(all.stream().map(ReportedFinding::finding).toList());
    return all.stream()
        .map(one -> new ReportedFinding(one.finding, fingerprints.of(one.finding), one.waived))
        .toList();
  }
}
