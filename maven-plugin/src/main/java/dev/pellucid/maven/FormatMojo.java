package dev.pellucid.maven;

import dev.pellucid.engine.FolderLayout;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Lays out every recipe, premix and profile of a folder; changes white space and nothing else.
 * Files with slips are left as they are.
 */
@Mojo(name = "format", threadSafe = true)
public final class FormatMojo extends AbstractMojo {
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
  public void execute() throws MojoExecutionException {
    if (skip) {
      getLog().info("pellucid: skipped");
      return;
    }
    File place = Places.folder(folder);
    if (!FolderLayout.isFeedFolder(place.toPath())) {
      getLog().info("pellucid: no pellucid.yaml in " + place + ", nothing to lay out");
      return;
    }
    try {
      FolderLayout layout = FolderLayout.of(place.toPath(), Places.prefix(place));
      layout.write(place.toPath());
      layout.changes().forEach(change -> getLog().info("laid out " + change.source().path()));
      layout.leftAlone().forEach(path -> getLog().warn("left alone, it has slips: " + path));
      layout.refused().forEach(path -> getLog().warn(Places.refused(path)));
      getLog()
          .info(
              "pellucid: " + layout.changes().size() + " of " + layout.files() + " files laid out");
    } catch (IOException broken) {
      throw Places.unreadable(broken);
    }
  }
}
