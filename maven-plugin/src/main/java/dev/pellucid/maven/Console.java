package dev.pellucid.maven;

import dev.pellucid.engine.CheckReport;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;

/** What the goals have in common: the day, and findings printed at their level. */
final class Console {
  private Console() {}

  static LocalDate day(@Nullable String day) throws MojoExecutionException {
    try {
      return day == null ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(day);
    } catch (DateTimeException notADay) {
      throw new MojoExecutionException(
          "pellucid.day is " + day + "; write year, month, day: 2027-03-31");
    }
  }

  static String refused(String path) {
    return "left alone, a fault of the formatter and not of the file: " + path;
  }

  static void print(CheckReport report, Log log) {
    report.findings().forEach(finding -> print(finding, log));
    log.info("pellucid: " + report.tally());
  }

  private static void print(Finding finding, Log log) {
    String text = FindingText.of(finding).stripTrailing();
    switch (finding.severity()) {
      case ERROR -> log.error(text);
      case WARNING -> log.warn(text);
      case NOTE -> log.info(text);
    }
  }
}
