package dev.pellucid.engine.outcome;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What came of a check to the text of each report, by the name of its file. */
public final class ReportFiles {
  public static final String SARIF = "findings.sarif";
  public static final String SARIF_WITHOUT_WAIVED = "findings-without-waived.sarif";
  public static final String JUNIT = "limits-junit.xml";
  public static final String JSON = "findings.json";
  public static final String SUMMARY = "summary.md";

  private ReportFiles() {}

  public static SortedMap<String, String> of(CheckOutcome outcome) {
    List<Told> told = Told.of(outcome);
    List<Told> open = told.stream().filter(one -> one.waived().isEmpty()).toList();
    TreeMap<String, String> files = new TreeMap<>();
    files.put(SARIF, SarifLog.of(told));
    files.put(SARIF_WITHOUT_WAIVED, SarifLog.of(open));
    files.put(JUNIT, LimitsJunit.of(outcome));
    files.put(JSON, FindingsJson.of(outcome, told));
    files.put(SUMMARY, SummaryPage.of(outcome));
    return files;
  }
}
