package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.show.Paint;
import dev.pellucid.text.PrintedPaths;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;

/** What the goals have in common: the day, and findings printed at their level. */
final class Console {
  private Console() {}

  static LocalDate day(@Nullable String day) throws MojoExecutionException {
    try {
      LocalDate read = day == null ? today() : LocalDate.parse(day);
      Optional<String> why = Pellucid.noDay(read);
      if (why.isPresent()) {
        throw new MojoExecutionException("pellucid.day is " + day + "; " + why.get());
      }
      return read;
    } catch (DateTimeException notADay) {
      throw new MojoExecutionException(
          "pellucid.day is " + day + "; write year, month, day: 2027-03-31");
    }
  }

  /**
   * The day that the day of a run is held against: today, or where that day was fixed on purpose
   * the same day, so that it is never far off.
   */
  static LocalDate clock(LocalDate day, boolean onPurpose) {
    return onPurpose ? day : today();
  }

  private static LocalDate today() {
    return LocalDate.now(ZoneId.systemDefault());
  }

  static String refused(String path) {
    return "left alone, a fault of the formatter and not of the file: " + path;
  }

  static void print(CheckReport report, PrintedPaths paths, Log log) {
    Paint paint = MavenPaint.now();
    report.shown().forEach(finding -> print(finding, paths, paint, log));
    if (!report.standing().isEmpty()) {
      log.info("pellucid: " + report.standing());
    }
    log.info("pellucid: " + report.tally());
  }

  private static void print(Finding finding, PrintedPaths paths, Paint paint, Log log) {
    String text = FindingText.of(finding, paths, paint).stripTrailing();
    switch (finding.severity()) {
      case ERROR -> log.error(text);
      case WARNING -> log.warn(text);
      case NOTE -> log.info(text);
    }
  }
}
