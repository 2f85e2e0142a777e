package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.FixedDay;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Writes a batch sheet for every recipe and premix that may be made, as text and as HTML to print.
 * A sheet from a tree with changes, or of a recipe that is not approved, is stamped as a draft not
 * to be made. An older sheet of one that may not be made is deleted.
 *
 * @since 0.1.0
 */
@Mojo(name = "batch-sheet", defaultPhase = LifecyclePhase.PACKAGE, threadSafe = true)
public final class BatchSheetMojo extends FolderGoal {
  /**
   * The folder that batch sheets and bag labels go to.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.sheets",
      defaultValue = "${project.build.directory}/batch-sheets",
      required = true)
  private @Nullable File sheets;

  /**
   * The day of the run, as 2027-03-31; use-by counts from it, waivers and prices are judged by it.
   * Today's where none is given.
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

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    LocalDate today = Console.day(day);
    GitState git = GitState.of(folder);
    git.trouble()
        .ifPresent(trouble -> getLog().warn("pellucid: every sheet is a draft: " + trouble));
    Version version = new Version(git.commit(), git.uncommitted());
    SheetReport report = Pellucid.batchSheets(feeds(folder), today, version);
    if (report.check().recipes() == 0) {
      throw new MojoFailureException("no recipe was found to make a sheet of in " + folder);
    }
    write(report);
    refuseFaults(report.check().faults());
    FixedDay.of(today, Console.clock(today, fixedDay))
        .ifPresent(
            far ->
                getLog().warn("pellucid: use-by days count from a day far off: " + far.sentence()));
  }

  private void write(SheetReport report) throws IOException, MojoExecutionException {
    File target = sheets;
    if (target == null) {
      throw new MojoExecutionException("pellucid.sheets says no folder");
    }
    Path to = target.toPath();
    refuseLinkOut(target, "pellucid.sheets");
    List<String> older = report.write(to);
    getLog().info("pellucid: " + report.tally() + " in " + to);
    report.labelTally().ifPresent(labels -> getLog().info("pellucid: " + labels + " beside them"));
    report
        .purchases()
        .ifPresent(
            list -> getLog().info("pellucid: a purchase list for planned batches beside them"));
    List<String> drafts = report.drafts();
    if (!drafts.isEmpty()) {
      getLog().info("pellucid: drafts, not to be made: " + String.join(", ", drafts));
    }
    for (String sentence : older) {
      getLog().warn("pellucid: " + sentence);
    }
    for (String code : report.withheld()) {
      getLog().warn("pellucid: no sheet for " + code + ", its findings must be fixed first");
    }
    if (!report.withheld().isEmpty()) {
      getLog().warn("pellucid: the goal check shows these findings");
    }
  }
}
