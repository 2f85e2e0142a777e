package dev.pellucid.maven;

import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;

/**
 * Lays out every recipe, premix and profile of a folder; changes white space and nothing else.
 * Files with slips are left as they are.
 *
 * @since 0.1.0
 */
@Mojo(name = "format", threadSafe = true)
public final class FormatMojo extends FolderGoal {
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
    layout.write(folder.toPath());
    layout.changes().forEach(change -> getLog().info("laid out " + paths.of(change.source())));
    layout
        .leftAlone()
        .forEach(path -> getLog().warn("left alone, it has slips: " + paths.of(path)));
    layout.refused().forEach(path -> getLog().warn(Console.refused(paths.of(path))));
    getLog()
        .info("pellucid: " + layout.changes().size() + " of " + layout.files() + " files laid out");
  }
}
