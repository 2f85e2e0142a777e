package dev.pellucid.engine;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What came of checking a folder.
 *
 * @param findings in the order of printing
 * @param batches how many batch records were held against their recipes
 * @param limits how many limits were judged
 * @param notChecked codes of recipes whose limits could not be judged, with the files that are to
 *     be mended first, if any
 * @param more how many findings of each severity are not among those told, since there are very
 *     many of one file
 */
public record CheckReport(
    List<Finding> findings,
    int recipes,
    int batches,
    int limits,
    List<String> notChecked,
    Map<Severity, Long> more) {
  public CheckReport {
    findings = List.copyOf(findings);
    notChecked = List.copyOf(notChecked);
    more = Map.copyOf(more);
  }

  /** The same with what else was found. */
  CheckReport with(List<Finding> more) {
    List<Finding> all = Stream.concat(findings.stream(), more.stream()).sorted().toList();
    return more.isEmpty()
        ? this
        : new CheckReport(all, recipes, batches, limits, notChecked, this.more);
  }

  /** How many there are of a severity, those that are not told too. */
  public long count(Severity severity) {
    return new Shown(findings, more).count(severity);
  }

  /** How many there are of each severity, those that are not told too. */
  Map<Severity, Long> counts() {
    Map<Severity, Long> counts = new EnumMap<>(Severity.class);
    for (Severity severity : Severity.values()) {
      counts.put(severity, count(severity));
    }
    return counts;
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
