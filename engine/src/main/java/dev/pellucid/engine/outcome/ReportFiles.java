package dev.pellucid.engine.outcome;

import dev.pellucid.text.PrintedPaths;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What came of a check as reports, by the name of its file. */
public final class ReportFiles {
  public static final String SARIF = "findings.sarif";
  public static final String SARIF_WITHOUT_WAIVED = "findings-without-waived.sarif";
  public static final String JUNIT = "limits-junit.xml";
  public static final String JSON = "findings.json";
  public static final String SUMMARY = "summary.md";
  public static final String ANNOTATIONS = "annotations.txt";
  public static final String CODE_QUALITY = "code-quality.json";

  private ReportFiles() {}

  /**
   * Each of them.
   *
   * @param paths how files are called in the reports
   */
  public static SortedMap<String, Report> of(CheckOutcome outcome, PrintedPaths paths, Tool tool) {
    List<ReportedFinding> told = ReportedFinding.of(outcome);
    List<ReportedFinding> open = told.stream().filter(one -> one.waived().isEmpty()).toList();
    TreeMap<String, Report> files = new TreeMap<>();
    files.put(SARIF, new SarifLog(told, paths, tool));
    files.put(SARIF_WITHOUT_WAIVED, new SarifLog(open, paths, tool));
    files.put(JUNIT, new LimitsJunit(outcome, paths));
    files.put(JSON, new FindingsJson(outcome, told, paths));
    files.put(SUMMARY, new SummaryPage(outcome, paths));
    files.put(ANNOTATIONS, new AnnotationLines(outcome, paths));
    files.put(CODE_QUALITY, new CodeQuality(open, paths));
    return files;
  }
}
