package dev.pellucid.engine.outcome;

import dev.pellucid.text.PrintedPaths;
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

  /**
   * The text of each.
   *
   * @param paths how files are called in the reports
   */
  public static SortedMap<String, String> of(CheckOutcome outcome, PrintedPaths paths) {
    List<ReportedFinding> told = ReportedFinding.of(outcome);
    List<ReportedFinding> open = told.stream().filter(one -> one.waived().isEmpty()).toList();
    TreeMap<String, String> files = new TreeMap<>();
    files.put(SARIF, SarifLog.of(told, paths));
    files.put(SARIF_WITHOUT_WAIVED, SarifLog.of(open, paths));
    files.put(JUNIT, LimitsJunit.of(outcome, paths));
    files.put(JSON, FindingsJson.of(outcome, told, paths));
    files.put(SUMMARY, SummaryPage.of(outcome, paths));
    return files;
  }
}
