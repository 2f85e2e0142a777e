package dev.pellucid.engine;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;
import java.util.stream.Stream;

/**
 * What came of checking a folder.
 *
 * @param findings in the order of printing
 * @param batches how many batch records were held against their recipes
 * @param limits how many limits were judged
 * @param notChecked codes of recipes whose limits could not be judged, with the files that are to
 *     be mended first, if any
 */
public record CheckReport(
    List<Finding> findings, int recipes, int batches, int limits, List<String> notChecked) {
  public CheckReport {
    findings = List.copyOf(findings);
    notChecked = List.copyOf(notChecked);
  }

  /** The same with what else was found. */
  CheckReport with(List<Finding> more) {
    List<Finding> all = Stream.concat(findings.stream(), more.stream()).sorted().toList();
    return more.isEmpty() ? this : new CheckReport(all, recipes, batches, limits, notChecked);
  }

  public long count(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }

  /** One line for the end of a run. */
  public String tally() {
    String told =
        String.join(
            ", ",
            Counted.of(recipes, "recipe")
                + (batches > 0 ? ", " + Counted.of(batches, "batch record") : "")
                + " and "
                + Counted.of(limits, "limit")
                + " checked: "
                + Counted.of(count(Severity.ERROR), "error"),
            Counted.of(count(Severity.WARNING), "warning"),
            Counted.of(count(Severity.NOTE), "note"));
    return notChecked.isEmpty()
        ? told
        : told + "; limits NOT CHECKED in " + String.join(", ", notChecked);
  }
}
