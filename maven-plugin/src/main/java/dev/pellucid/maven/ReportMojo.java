package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.PastState;
import dev.pellucid.engine.goal.SiteReport;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.maven.doxia.sink.Sink;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.reporting.MavenReport;
import org.apache.maven.reporting.MavenReportException;
import org.jspecify.annotations.Nullable;

/**
 * Writes pages about the folder, to be opened from the disk: one for all feeds, with search, and
 * one for each feed, ingredient and profile of limits. Fails nothing: what a check finds stands in
 * the pages. Among the reports of a project it puts them into the project's site.
 *
 * @since 0.1.0
 */
@Mojo(name = "report", threadSafe = true)
public final class ReportMojo extends FolderGoal implements MavenReport {
  private static final String IN_SITE = "pellucid";

  private static final String OLD_SITE =
      "this site is built by a maven-site-plugin older than 3.20.0; where the site fails or lacks a"
          + " report, name version 3.21.0 of maven-site-plugin in pom.xml, as README shows";

  /**
   * The day that judges waivers and prices, as 2027-03-31. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * How many of the last commits that changed the folder are looked at for the history of each
   * feed; zero for none.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.history", defaultValue = "10")
  private int history = 10;

  /**
   * Where the pages go; index.html is the first.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.pages",
      defaultValue = "${project.build.directory}/pages",
      required = true)
  private @Nullable File pages;

  /** Where the site is built; set by who builds it. */
  private @Nullable File site;

  @Override
  public void generate(Sink sink, Locale locale) throws MavenReportException {
    try {
      pages = new File(getReportOutputDirectory(), IN_SITE);
      execute();
    } catch (MojoExecutionException | MojoFailureException failed) {
      throw new MavenReportException(failed.getMessage(), failed);
    }
  }

  /** The same as older builders of sites ask for it. */
  public void generate(org.codehaus.doxia.sink.Sink sink, Locale locale)
      throws MavenReportException {
    Sink same = sink;
    generate(same, locale);
  }

  /** By this name older builders of sites ask, and newer ones fall back on it. */
  @Override
  @SuppressWarnings("deprecation")
  public String getOutputName() {
    return IN_SITE + "/index";
  }

  @Override
  public String getCategoryName() {
    return CATEGORY_PROJECT_REPORTS;
  }

  @Override
  public String getName(Locale locale) {
    return "Feeds";
  }

  @Override
  public String getDescription(Locale locale) {
    return "Every feed of the folder: limits, cost, ingredients and where each figure comes from.";
  }

  @Override
  public void setReportOutputDirectory(File directory) {
    site = directory;
  }

  @Override
  public @Nullable File getReportOutputDirectory() {
    return site;
  }

  /** Its pages are whole: the site links to them and puts nothing around them. */
  @Override
  public boolean isExternalReport() {
    return true;
  }

  @Override
  public boolean canGenerateReport() {
    if (isOldSite()) {
      // Told before any report is made, since one of another plugin may stop the site.
      getLog().warn(OLD_SITE);
    }
    return isFeedFolder();
  }

  private static boolean isOldSite() {
    try {
      MavenReport.class.getMethod("generate", Sink.class, Locale.class);
      return false;
    } catch (NoSuchMethodException old) {
      return true;
    }
  }

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    File target = pages;
    if (target == null) {
      throw new MojoExecutionException("pellucid.pages says no folder");
    }
    if (history < 0) {
      throw new MojoExecutionException(
          "pellucid.history is " + history + "; write a number from 0");
    }
    refuseLinkOut(target, "pellucid.pages");
    SiteReport report =
        Pellucid.report(
            feeds(folder), paths(folder), Console.day(day), past(folder), target.toPath());
    getLog().info("pellucid: " + report.check().tally());
    getLog().info("pellucid: " + report.tally() + " in " + target);
  }

  private List<PastState> past(File folder) {
    List<PastState> past = new ArrayList<>();
    if (history == 0) {
      return past;
    }
    Git git = new Git(folder);
    try {
      for (GitState.Commit commit : GitState.last(git, history)) {
        NamedState.Commit full = new NamedState.Commit(commit.name());
        FolderState then = ComingAlong.under(NamedState.of(git, full));
        past.add(new PastState(commit.shortName(), commit.day(), then));
      }
    } catch (GitTrouble trouble) {
      if (!trouble.isUsual()) {
        getLog().warn("pellucid: no history: " + trouble.getMessage());
      }
    }
    return past;
  }
}
