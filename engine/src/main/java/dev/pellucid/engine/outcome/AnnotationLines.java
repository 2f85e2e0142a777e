package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Findings as commands for a build server that reads them from its own log, {@code ::error
 * file=…,line=…::…}, and shows each beside the line of the change that it is about. Such a server
 * shows few of them, so of each severity at most fifty are told, and how many are left out.
 */
final class AnnotationLines implements Report {
  private static final int MOST = 50;

  private final CheckOutcome outcome;
  private final PrintedPaths paths;

  AnnotationLines(CheckOutcome outcome, PrintedPaths paths) {
    this.outcome = outcome;
    this.paths = paths;
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    for (Severity severity : List.of(Severity.ERROR, Severity.WARNING, Severity.NOTE)) {
      List<Finding> findings = outcome.of(severity);
      for (Finding finding : findings.subList(0, Math.min(MOST, findings.size()))) {
        write(out, line(finding));
      }
      if (findings.size() > MOST) {
        write(out, "::notice::" + leftOut(findings.size() - MOST, severity));
      }
    }
  }

  private static void write(OutputStream out, String line) throws IOException {
    out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private static String leftOut(int number, Severity severity) {
    return number
        + " more of severity "
        + severity.word()
        + "; "
        + ReportFiles.SUMMARY
        + " and "
        + ReportFiles.JSON
        + " tell of them";
  }

  private String line(Finding finding) {
    StringBuilder text = new StringBuilder(finding.headline());
    finding.helps().forEach(help -> text.append("\nhelp: ").append(help));
    return "::"
        + word(finding.severity())
        + " file="
        + property(paths.of(finding.span().file()))
        + ",line="
        + finding.span().from().line()
        + ",col="
        + finding.span().from().column()
        + ",title="
        + property(finding.code().text())
        + "::"
        + escaped(text.toString());
  }

  /** What such a server calls it. */
  private static String word(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "notice";
    };
  }

  private static String property(String text) {
    return escaped(text).replace(":", "%3A").replace(",", "%2C");
  }

  private static String escaped(String text) {
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
  }
}
