package dev.pellucid.maven;

import dev.pellucid.engine.FolderLayout;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/** A goal that works on a folder of feeds: which one, and whether to work at all. */
abstract class FolderGoal extends AbstractMojo {
  /**
   * The folder of recipes.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.folder", defaultValue = "${project.basedir}", required = true)
  private @Nullable File folder;

  /**
   * Whether to do nothing.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.skip", defaultValue = "false")
  private boolean skip;

  @Override
  public final void execute() throws MojoExecutionException, MojoFailureException {
    if (skip) {
      getLog().info("pellucid: skipped");
      return;
    }
    if (folder == null || !folder.isDirectory()) {
      throw new MojoExecutionException(
          "there is no folder " + folder + "; say which with -Dpellucid.folder=recipes");
    }
    try {
      work(folder);
    } catch (IOException broken) {
      throw new MojoExecutionException("reading or writing failed: " + broken.getMessage(), broken);
    }
  }

  /** Whether there is anything to work on. */
  final boolean isFeedFolder() {
    return !skip && folder != null && FolderLayout.isFeedFolder(folder.toPath());
  }

  abstract void work(File folder) throws IOException, MojoExecutionException, MojoFailureException;

  /** What is printed before each path: the folder's own name. */
  static String prefix(File folder) {
    return folder.getName() + "/";
  }
}
