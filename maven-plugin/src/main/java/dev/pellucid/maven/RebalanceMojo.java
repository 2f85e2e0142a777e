package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.RebalanceReport;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Holds one planned batch against every limit with what was measured of its lots, and finds the
 * smallest change of its shares that keeps them all, within the bounds of its recipe, as a block of
 * its record with the reasons. Fails where no shares do.
 *
 * @since 0.1.0
 */
@Mojo(name = "rebalance", threadSafe = true)
public final class RebalanceMojo extends FolderGoal {
  /**
   * The number of a batch that is planned, as CG-36-2026-12-03-1.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.batch")
  private String batch = "";

  /**
   * Lines that may move too though they tell no within, parted by commas.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.free")
  private String free = "";

  /**
   * The day on which the shares are given, as 2027-03-31; it judges waivers and prices. Today's
   * where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * Whether the shares are written into the record.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.write", defaultValue = "false")
  private boolean write;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    PrintedPaths paths = paths(folder);
    RebalanceReport report =
        Pellucid.rebalance(feeds(folder), Console.day(day), batch.strip(), free.strip());
    if (report.problem().isPresent()) {
      throw new MojoFailureException(Unseen.shown(report.problem().get()));
    }
    show(report.text());
    if (write) {
      changed(report.apply(folder.toPath()), paths);
    }
    report.next(write).forEach(getLog()::info);
    if (report.isStuck()) {
      throw new MojoFailureException(
          "no shares of " + batch.strip() + " keep every limit with its lots: take another lot");
    }
  }
}
