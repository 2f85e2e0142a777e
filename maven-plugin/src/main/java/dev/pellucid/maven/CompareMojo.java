package dev.pellucid.maven;

import dev.pellucid.engine.CompareReport;
import dev.pellucid.engine.FolderState;
import dev.pellucid.engine.Pellucid;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Shows what a change does to the feeds: limits newly broken, met or tight, nutrients, cost, shares
 * and waivers, of recipes that were edited and of those that only their data changed.
 */
@Mojo(name = "compare", threadSafe = true)
public final class CompareMojo extends FolderGoal {
  /**
   * What was: a git revision, or a folder.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.from", defaultValue = "HEAD")
  private String from = "HEAD";

  /**
   * What is: a git revision, or a folder; the files as they lie there where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.to")
  private String to = "";

  /**
   * The day that judges waivers and prices of both, as 2027-03-31. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * Where compare.txt and compare.md go.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.comparison",
      defaultValue = "${project.build.directory}/comparison",
      required = true)
  private @Nullable File comparison;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    CompareReport report =
        Pellucid.compare(state(folder, from.strip()), state(folder, to.strip()), Console.day(day));
    report.text().lines().forEach(getLog()::info);
    if (comparison == null) {
      throw new MojoExecutionException("pellucid.comparison says no folder");
    }
    report.write(comparison.toPath());
    getLog().info("pellucid: written to " + comparison);
  }

  /**
   * The folder at a revision, as it lies there for an empty name, or another folder. {@code git
   * archive} works in a shallow clone, a work tree, with a detached head and in a subfolder of a
   * repository, and touches neither index nor files.
   */
  private static FolderState state(File folder, String name) throws MojoFailureException {
    File other = new File(name).isAbsolute() ? new File(name) : new File(folder, name);
    if (name.isEmpty() || other.isDirectory()) {
      return FolderState.at(name.isEmpty() ? folder.toPath() : other.toPath());
    }
    return GitState.bytes(folder, "archive", "--format=zip", name, ".")
        .map(FolderState::packed)
        .orElseThrow(
            () ->
                new MojoFailureException(
                    name
                        + " is neither a folder nor a revision that git knows here; in a shallow"
                        + " clone fetch it first: git fetch --unshallow"));
  }
}
