package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Shows what a change does to the feeds: limits newly broken, met or tight, the label, cost and
 * what moved it, shares, nutrients, weights on the scales and waivers, of recipes that were edited
 * and of those that only their data changed.
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
   * By how many percent the cost of a kg in the bags may rise before the build fails; any where
   * none is given. A feed with a waiver of a limit on cost may rise further.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.costRise")
  private @Nullable Double costRise;

  /**
   * By how many percent a nutrient with a limit on it may rise or fall before the build fails; any
   * where none is given. One with a waiver of such a limit may move further.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.nutrientMove")
  private @Nullable Double nutrientMove;

  /**
   * Where a reader of compare.md finds the full comparison: an address, or the file beside it.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.fullComparison", defaultValue = "compare.html")
  private String fullComparison = "compare.html";

  /**
   * Where compare.txt, compare.md, compare.html and compare.json go.
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
    OptionalDouble mostRise = percent("pellucid.costRise", costRise);
    OptionalDouble mostMove = percent("pellucid.nutrientMove", nutrientMove);
    if (comparison == null) {
      throw new MojoExecutionException("pellucid.comparison says no folder");
    }
    refuseLinkOut(comparison, "pellucid.comparison");
    Git git = new Git(folder);
    CompareReport report =
        Pellucid.compare(
            NamedState.of(git, from.strip()),
            NamedState.of(git, to.strip()),
            paths(folder),
            Console.day(day),
            fullComparison);
    report.text().lines().map(Unseen::shown).forEach(getLog()::info);
    report.write(comparison.toPath());
    getLog().info("pellucid: written to " + comparison);
    List<String> beyond = report.beyond(mostRise, mostMove);
    if (!beyond.isEmpty()) {
      throw new MojoFailureException(String.join("; ", beyond));
    }
  }

  private static OptionalDouble percent(String name, @Nullable Double percent)
      throws MojoExecutionException {
    if (percent == null) {
      return OptionalDouble.empty();
    }
    if (!(percent >= 0)) {
      throw new MojoExecutionException(name + " is " + percent + "; write percent from 0 on");
    }
    return OptionalDouble.of(percent);
  }
}
