package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.ReportSettings;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Checks every recipe of a folder and fails the build on what must not be made as written. Before
 * that it writes what came of it for build servers: SARIF, JUnit XML, JSON and Markdown.
 *
 * @since 0.1.0
 */
@Mojo(name = "check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true)
public final class CheckMojo extends FolderGoal {
  /**
   * The least serious finding that fails the build: error, warning or note; or never, so that none
   * does.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.failOn", defaultValue = "error")
  private String failOn = "error";

  /**
   * The day of the run, as 2027-03-31; it judges waivers and prices. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * Whether the day is fixed on purpose, as in an example that must stay the same; then nothing is
   * said where it lies far from the day by the clock.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.fixedDay", defaultValue = "false")
  private boolean fixedDay;

  /**
   * Where the reports go: findings.sarif, findings-without-waived.sarif, limits-junit.xml,
   * findings.json, summary.md, and for build servers annotations.txt and code-quality.json.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.reports",
      defaultValue = "${project.build.directory}/check-reports",
      required = true)
  private @Nullable File reports;

  /**
   * An address of what there is to read about this program; SARIF tells it. None where none is
   * given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.address")
  private @Nullable String address;

  /**
   * The address of a folder in which the pages of the rules lie, as CODE.md; SARIF links each rule
   * to its page. No links where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.rulesAddress")
  private @Nullable String rulesAddress;

  /** The version of this plugin. */
  @Parameter(defaultValue = "${plugin.version}", readonly = true)
  private @Nullable String version;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    LocalDate today = Console.day(day);
    getLog().info("pellucid: the day is " + today);
    Optional<Severity> failing = failing();
    PrintedPaths paths = paths(folder);
    ReportSettings settings =
        new ReportSettings(
            paths,
            // An error is a failure to a report of tests, whatever lets the build pass.
            failing.orElse(Severity.ERROR),
            version == null ? "" : version,
            whole("pellucid.address", address),
            whole("pellucid.rulesAddress", rulesAddress));
    CheckReports checked =
        Pellucid.checkWithReports(feeds(folder), settings, today, Console.clock(today, fixedDay));
    CheckReport report = checked.check();
    Console.print(report, paths, getLog());
    if (!report.dataAlong().isEmpty()) {
      getLog().info("pellucid: with version " + version + " come " + report.dataAlong());
    }
    write(checked);
    refuseFaults(report.faults());
    if (report.recipes() == 0) {
      throw new MojoFailureException("no recipe was found to check in " + folder);
    }
    if (failing.isPresent() && report.countFrom(failing.get()) > 0) {
      throw new MojoFailureException("recipes must not be made as written: " + report.tally());
    }
  }

  private void write(CheckReports checked) throws IOException, MojoExecutionException {
    File target = reports;
    if (target == null) {
      throw new MojoExecutionException("pellucid.reports says no folder");
    }
    refuseLinkOut(target, "pellucid.reports");
    checked.write(target.toPath());
    getLog().info("pellucid: reports are in " + target);
  }

  /** The least grave findings that fail the build, if any do. */
  private Optional<Severity> failing() throws MojoExecutionException {
    return switch (failOn.toLowerCase(Locale.ROOT)) {
      case "error" -> Optional.of(Severity.ERROR);
      case "warning" -> Optional.of(Severity.WARNING);
      case "note" -> Optional.of(Severity.NOTE);
      case "never" -> Optional.empty();
      default ->
          throw new MojoExecutionException(
              "pellucid.failOn is " + failOn + "; write error, warning, note or never");
    };
  }

  /** An address as it was given, or nothing; half an address would help nobody. */
  private static String whole(String parameter, @Nullable String address)
      throws MojoExecutionException {
    if (address == null || address.isBlank()) {
      return "";
    }
    try {
      URI uri = new URI(address.strip());
      if (uri.isAbsolute() && !uri.isOpaque() && uri.getHost() != null) {
        return uri.toString();
      }
    } catch (URISyntaxException none) {
      // Told below, as what is half an address is.
    }
    throw new MojoExecutionException(
        parameter + " is " + address + "; write a whole address, which begins with https://");
  }
}
