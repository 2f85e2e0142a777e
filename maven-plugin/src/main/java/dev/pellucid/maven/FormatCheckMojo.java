package dev.pellucid.maven;

import dev.pellucid.engine.FolderLayout;
import dev.pellucid.engine.report.LayoutDiff;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/** Fails where a recipe, premix or profile is not laid out as the goal format would lay it out. */
@Mojo(name = "format-check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true)
public final class FormatCheckMojo extends AbstractMojo {
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

  /**
   * The command that lays the files out, told to whoever has to run it.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.formatCommand", defaultValue = "mvn pellucid:format")
  private String formatCommand = "mvn pellucid:format";

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    if (skip) {
      getLog().info("pellucid: skipped");
      return;
    }
    File place = Places.folder(folder);
    if (!FolderLayout.isFeedFolder(place.toPath())) {
      getLog().info("pellucid: no pellucid.yaml in " + place + ", nothing to lay out");
      return;
    }
    FolderLayout layout = layout(place);
    for (FolderLayout.Change change : layout.changes()) {
      getLog().error(String.join("\n", LayoutDiff.of(change)));
    }
    layout.leftAlone().forEach(path -> getLog().warn("not looked at, it has slips: " + path));
    layout.refused().forEach(path -> getLog().warn(Places.refused(path)));
    if (!layout.changes().isEmpty()) {
      throw new MojoFailureException(layout.tally() + "; run: " + formatCommand);
    }
    getLog().info("pellucid: " + layout.inOrder() + " files are laid out");
  }

  private static FolderLayout layout(File place) throws MojoExecutionException {
    try {
      return FolderLayout.of(place.toPath(), Places.prefix(place));
    } catch (IOException broken) {
      throw Places.unreadable(broken);
    }
  }
}
