package dev.pellucid.maven;

import dev.pellucid.engine.FolderLayout;
import dev.pellucid.engine.NoFeeds;
import java.io.File;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
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
      if (needsFeeds()) {
        Optional<String> message = NoFeeds.message(folder.toPath(), goal());
        if (message.isPresent()) {
          throw new MojoFailureException(message.get());
        }
      }
      work(folder);
    } catch (IOException broken) {
      throw new MojoExecutionException("reading or writing failed: " + broken.getMessage(), broken);
    }
  }

  /** Whether it is a mistake to call it where no feeds are. */
  boolean needsFeeds() {
    return true;
  }

  /** As it is called behind the prefix: {@code batch-sheet} of {@code BatchSheetMojo}. */
  private String goal() {
    String words = getClass().getSimpleName().replace("Mojo", "");
    return words.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
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
