package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Shows what a change does to the feeds: what the check says anew and no more, limits newly broken,
 * met or tight, the label, cost and what moved it, shares, nutrients, weights on the scales and
 * waivers, of recipes and premixes that were edited and of those that only their data changed.
 *
 * @since 0.1.0
 */
@Mojo(name = "compare", threadSafe = true)
public final class CompareMojo extends FolderGoal {
  /**
   * What was: a git revision, or a folder. main... stands for the commit where the branch that is
   * checked out, or what pellucid.to names, began, and main...feature for that and for what is.
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
   * The least serious finding of the check that fails the build where it is new: error, warning or
   * note; or never, so that none does.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.failOnNew", defaultValue = "never")
  private String failOnNew = "never";

  /**
   * The code of a feed or premix that is shown in full; the others are left out.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.feed")
  private @Nullable String feed;

  /**
   * Whether every feed is shown in full, and not in one line.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.full", defaultValue = "false")
  private boolean full;

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

  /** The version of this plugin. */
  @Parameter(defaultValue = "${plugin.version}", readonly = true)
  private @Nullable String version;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    OptionalDouble mostRise = percent("pellucid.costRise", costRise);
    OptionalDouble mostMove = percent("pellucid.nutrientMove", nutrientMove);
    Optional<Severity> least = least();
    if (comparison == null) {
      throw new MojoExecutionException("pellucid.comparison says no folder");
    }
    refuseLinkOut(comparison, "pellucid.comparison");
    ComparedStates states =
        ComparedStates.of(new Git(folder), from.strip(), to.strip(), this::past);
    CompareReport report =
        Pellucid.compare(
            states.from().over(dataBefore(states)),
            ComingAlong.under(states.to()),
            paths(folder),
            Console.day(day),
            fullComparison);
    shown(report).lines().map(Unseen::shown).forEach(getLog()::info);
    report.write(comparison.toPath());
    getLog().info("pellucid: written to " + comparison);
    List<String> beyond = new ArrayList<>();
    least.flatMap(report::refused).ifPresent(beyond::add);
    beyond.addAll(report.beyond(mostRise, mostMove));
    if (!beyond.isEmpty()) {
      throw new MojoFailureException(String.join("; ", beyond));
    }
  }

  /** The data that came with the version of the plugin that the earlier state asks for. */
  private Bundled dataBefore(ComparedStates states) throws IOException {
    Optional<String> asked = states.pomBefore().flatMap(PluginVersion::of);
    if (asked.isEmpty() || asked.get().equals(version) || formerData().isEmpty()) {
      return ComingAlong.data();
    }
    Optional<Bundled> former = formerData().get().of(asked.get());
    getLog()
        .info(
            former.isPresent()
                ? "pellucid: the state before is computed with the data of version " + asked.get()
                : "pellucid: the data of version "
                    + asked.get()
                    + " cannot be had, so both states are computed with those of version "
                    + version
                    + "; what differs between the two is not told");
    return former.orElseGet(ComingAlong::data);
  }

  private String shown(CompareReport report) {
    if (feed != null && !feed.isBlank()) {
      String code = feed.strip();
      return report
          .of(code)
          .orElseGet(() -> report.tally() + "\n" + code + " does not change, or is no code here");
    }
    return full ? report.text() : report.brief();
  }

  private Optional<Severity> least() throws MojoExecutionException {
    return switch (failOnNew.toLowerCase(Locale.ROOT)) {
      case "error" -> Optional.of(Severity.ERROR);
      case "warning" -> Optional.of(Severity.WARNING);
      case "note" -> Optional.of(Severity.NOTE);
      case "never" -> Optional.empty();
      default ->
          throw new MojoExecutionException(
              "pellucid.failOnNew is " + failOnNew + "; write error, warning, note or never");
    };
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
