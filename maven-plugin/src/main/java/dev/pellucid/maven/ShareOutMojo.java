package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.ShareOutReport;
import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Shares out what is short over the feeds of a plan, or over the batches that are planned, so that
 * all together cost least and every limit is kept; tells what a tonne more of it is worth, what
 * cannot be made, and what is to be bought. Lines with within, and the rest, are free.
 *
 * @since 0.1.0
 */
@Mojo(name = "share-out", threadSafe = true)
public final class ShareOutMojo extends FolderGoal {
  /**
   * The name of a file of plans/, as december. Where none is given, the batches that are planned in
   * batches/ are the plan, and all that the folder keeps lots of comes from the store alone.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.plan")
  private String plan = "";

  /**
   * Lines that may change too though they tell no within, parted by commas.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.free")
  private @Nullable String free;

  /**
   * Ingredients that are not in a recipe and may come in, parted by commas.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.try")
  private @Nullable String offered;

  /**
   * What must stay as it is printed: label, for what it declares and the order of its list.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.keep")
  private @Nullable String keep;

  /**
   * In which part of batches limits are kept that do not say so themselves: in 90 % of batches.
   * Where none is given they are kept on average.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.margin")
  private @Nullable String margin;

  /**
   * Which prices count: fresh, so that nothing is asked where a price of a feed is older than 60
   * days, or any.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.prices", defaultValue = "fresh")
  private String prices = "fresh";

  /**
   * The day that judges waivers and prices, as 2027-03-31. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * Whether the changes are written into the recipes.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.write", defaultValue = "false")
  private boolean write;

  /**
   * Where share-out.txt, share-out.md, share-out.html and share-out.json go.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.shareOut",
      defaultValue = "${project.build.directory}/share-out",
      required = true)
  private @Nullable File shareOut;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    if (shareOut == null) {
      throw new MojoExecutionException("pellucid.shareOut says no folder");
    }
    refuseLinkOut(shareOut, "pellucid.shareOut");
    PrintedPaths paths = paths(folder);
    ShareOutReport report =
        Pellucid.shareOut(feeds(folder), Console.day(day), plan.strip(), wishes(), paths);
    if (report.problem().isPresent()) {
      throw new MojoFailureException(report.problem().get());
    }
    show(report.shown());
    report.write(shareOut.toPath());
    getLog().info("pellucid: written to " + shareOut);
    if (write) {
      changed(report.apply(folder.toPath()), paths);
    }
    report.next(write).forEach(getLog()::info);
  }

  private Map<String, String> wishes() {
    return new Wished()
        .with("free", free)
        .with("try", offered)
        .with("keep", keep)
        .with("margin", margin)
        .with("prices", prices)
        .words();
  }
}
