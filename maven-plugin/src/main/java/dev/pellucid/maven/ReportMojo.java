package dev.pellucid.maven;

import dev.pellucid.engine.PastState;
import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.SiteReport;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Writes pages about the folder, to be opened from the disk: one for all feeds, with search, and
 * one for each feed, ingredient and profile of limits. Fails nothing: what a check finds stands in
 * the pages.
 */
@Mojo(name = "report", threadSafe = true)
public final class ReportMojo extends FolderGoal {
  /**
   * The day that judges waivers and prices, as 2027-03-31. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * How many of the last commits that changed the folder are looked at for the history of each
   * feed; nought for none.
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
    SiteReport report =
        Pellucid.report(
            folder.toPath(), prefix(folder), Console.day(day), past(folder), target.toPath());
    getLog().info("pellucid: " + report.check().tally());
    getLog().info("pellucid: " + report.tally() + " in " + target);
  }

  private List<PastState> past(File folder) throws MojoFailureException {
    List<PastState> past = new ArrayList<>();
    if (history > 0) {
      for (GitState.Commit commit : GitState.last(folder, history)) {
        past.add(new PastState(commit.name(), commit.day(), NamedState.of(folder, commit.name())));
      }
    }
    return past;
  }
}
