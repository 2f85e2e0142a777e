package dev.pellucid.maven;

import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.report.LayoutDiff;
import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Fails where a recipe, premix or profile is not laid out as the goal format would lay it out.
 *
 * @since 0.1.0
 */
@Mojo(name = "format-check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true)
public final class FormatCheckMojo extends FolderGoal {
  /**
   * The command that lays the files out, told to whoever has to run it.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.formatCommand", defaultValue = "mvn pellucid:format")
  private String formatCommand = "mvn pellucid:format";

  /**
   * Where no feeds are, nothing is to be laid out: a parent project, which has none itself, often
   * names this goal for all the projects below it.
   */
  @Override
  boolean needsFeeds() {
    return false;
  }

  @Override
  void work(File folder) throws IOException, MojoFailureException {
    if (!FolderLayout.isFeedFolder(folder.toPath())) {
      getLog().info("pellucid: no pellucid.yaml in " + folder + ", nothing to lay out");
      return;
    }
    FolderLayout layout = FolderLayout.of(folder.toPath());
    PrintedPaths paths = paths(folder);
    for (FolderLayout.Change change : layout.changes()) {
      getLog().error(String.join("\n", LayoutDiff.of(change.source(), change.laidOut(), paths)));
    }
    layout
        .leftAlone()
        .forEach(path -> getLog().warn("not looked at, it has slips: " + paths.of(path)));
    layout.refused().forEach(path -> getLog().warn(Console.refused(paths.of(path))));
    if (!layout.changes().isEmpty()) {
      throw new MojoFailureException(layout.tally() + "; run: " + formatCommand);
    }
    getLog().info("pellucid: " + layout.inOrder() + " files are laid out");
  }
}
