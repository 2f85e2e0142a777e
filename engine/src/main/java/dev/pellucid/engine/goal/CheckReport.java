package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.workspace.FixOrder;
import dev.pellucid.engine.workspace.Judged;
import dev.pellucid.engine.workspace.Shown;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What came of checking a folder.
 *
 * @param findings in the order in which they are to be fixed
 * @param batches how many batch records were held against their recipes
 * @param limits how many limits were judged
 * @param judged by whom these limits are asked
 * @param notChecked codes of recipes whose limits could not be judged, with the files that are to
 *     be fixed first, if any
 * @param faults what broke in this program; findings tell of it
 * @param dataAlong what the folder takes of the data that come with the program; empty for nothing
 */
public record CheckReport(
    List<Finding> findings,
    int recipes,
    int batches,
    int limits,
    Judged judged,
    List<String> notChecked,
    List<Throwable> faults,
    String dataAlong) {
  public CheckReport {
    findings = List.copyOf(findings);
    notChecked = List.copyOf(notChecked);
    faults = List.copyOf(faults);
  }

  /** Of a whole folder. */
  static CheckReport of(Whole whole, Texts texts) {
    return new CheckReport(
        whole.findings(),
        whole.recipes(),
        whole.batches(),
        whole.limits(),
        whole.judged(),
        whole.notChecked(),
        whole.faults(),
        DataAlong.words(texts));
  }

  /** The same with what else was found. */
  CheckReport with(List<Finding> more) {
    List<Finding> all =
        Stream.concat(findings.stream(), more.stream()).sorted(FixOrder.ORDER).toList();
    return more.isEmpty()
        ? this
        : new CheckReport(all, recipes, batches, limits, judged, notChecked, faults, dataAlong);
  }

  /** Those that are printed; where there are very many of a kind in a file, not all of them. */
  public List<Finding> shown() {
    return Shown.of(findings);
  }

  /** How many there are of a severity. */
  public long count(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }

  /** How many there are of a severity and of graver ones. */
  public long countFrom(Severity least) {
    return findings.stream().filter(finding -> finding.severity().compareTo(least) <= 0).count();
  }

  /** How many there are of each severity. */
  Map<Severity, Long> counts() {
    Map<Severity, Long> counts = new EnumMap<>(Severity.class);
    for (Severity severity : Severity.values()) {
      counts.put(severity, count(severity));
    }
    return counts;
  }

  /**
   * Who asks for the limits that were judged, and which recipes are asked less than their sisters;
   * empty where nothing was asked but by recipes themselves.
   */
  public String standing() {
    return judged.words();
  }

  /** One line for the end of a run. */
  public String tally() {
    String told =
        String.join(
            ", ",
            Plural.of(recipes, "recipe")
                + (batches > 0 ? ", " + Plural.of(batches, "batch record") : "")
                + " and "
                + Plural.of(limits, "limit")
                + " checked: "
                + Plural.of(count(Severity.ERROR), "error"),
            Plural.of(count(Severity.WARNING), "warning"),
            Plural.of(count(Severity.NOTE), "note"));
    return notChecked.isEmpty()
        ? told
        : told + "; limits NOT CHECKED in " + String.join(", ", notChecked);
  }
}
