package dev.pellucid.engine;

import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.outcome.Report;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reports as texts. */
public final class ReportTexts {
  private ReportTexts() {}

  /** All of a check, by the names of their files. */
  static SortedMap<String, String> of(CheckReports reports) {
    SortedMap<String, String> texts = new TreeMap<>();
    reports.files().forEach((name, report) -> texts.put(name, of(report)));
    return texts;
  }

  /** The one of this name. */
  static String of(CheckReports reports, String name) {
    return of(Objects.requireNonNull(reports.files().get(name), name));
  }

  /** The text of a report. */
  public static String of(Report report) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      report.writeTo(out);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toString(StandardCharsets.UTF_8);
  }
}
