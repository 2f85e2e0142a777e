package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * Findings as the list of issues that build servers of another kind show beside the lines of a
 * change: a description, a name of the check, a fingerprint, how grave it is, a file and a line.
 */
final class CodeQuality implements Report {
  private final List<ReportedFinding> told;
  private final PrintedPaths paths;

  CodeQuality(List<ReportedFinding> told, PrintedPaths paths) {
    this.told = told;
    this.paths = paths;
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    Json.writeList(out, json -> told.forEach(one -> issue(json, one)));
  }

  private void issue(Json json, ReportedFinding one) {
    Finding finding = one.finding();
    json.object();
    json.put("type", "issue");
    json.put("description", finding.headline());
    json.put("check_name", finding.code().text());
    json.put("fingerprint", one.fingerprint());
    json.put("severity", word(finding.severity()));
    json.object("location");
    json.put("path", paths.of(finding.span().file()));
    json.object("lines");
    json.put("begin", finding.span().from().line());
    json.put("end", finding.span().to().line());
    json.end();
    json.end();
    json.end();
  }

  /** One of the five words of such a list. */
  private static String word(Severity severity) {
    return switch (severity) {
      case ERROR -> "critical";
      case WARNING -> "minor";
      case NOTE -> "info";
    };
  }
}
