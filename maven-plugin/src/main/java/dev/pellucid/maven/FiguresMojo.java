package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Writes the figures of each recipe beside it, as CODE.figures with one fact on a line, so that a
 * diff shows what a change does to the feed beside the change. Limits need not be kept; a recipe
 * that cannot be computed gets none.
 *
 * @since 0.1.0
 */
@Mojo(name = "figures", threadSafe = true)
public final class FiguresMojo extends FolderGoal {
  /**
   * The code of the only recipe to write figures of; all where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.recipe")
  private String recipe = "";

  /**
   * Whether to write only those that are there already.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.kept", defaultValue = "false")
  private boolean kept;

  @Override
  void work(File folder) throws IOException, MojoFailureException {
    FiguresReport report = Pellucid.figures(feeds(folder), recipe.strip(), kept);
    if (report.problem().isPresent()) {
      throw new MojoFailureException(report.problem().get());
    }
    PrintedPaths paths = paths(folder);
    report.write(folder.toPath());
    report.changes().forEach(change -> getLog().info("written " + paths.of(change.path())));
    report.unmade().forEach(one -> getLog().warn("pellucid: no figures of " + one));
    report
        .withoutRecipe()
        .forEach(
            path -> getLog().warn("pellucid: its recipe is gone, delete it: " + paths.of(path)));
    getLog().info("pellucid: " + report.tally());
  }
}
