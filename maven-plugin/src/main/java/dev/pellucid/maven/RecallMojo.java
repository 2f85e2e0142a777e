package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.AskedOn;
import dev.pellucid.engine.goal.RecallReport;
import dev.pellucid.show.FindingText;
import dev.pellucid.show.Paint;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Properties;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Tells of a lot or a batch what to stop, whom to call, whether the books add up, which samples
 * were kept, and how it got into each batch: what is certain apart from what is possible. Fails
 * where the number is not known, and where a record cannot be searched.
 *
 * @since 0.1.0
 */
@Mojo(name = "recall", threadSafe = true)
public final class RecallMojo extends FolderGoal {
  /**
   * The number of a lot of an ingredient, or of a batch made here.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.lot")
  private @Nullable String lot;

  /**
   * The number of a batch, to see what is in it too.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.batch")
  private @Nullable String batch;

  /**
   * The day that stands on the list and in the lines to write, as 2027-03-31, where it is typed
   * with the question. Else it is today: a day that pom.xml fixes for other goals does not count
   * here.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /** What was typed with the question. */
  @Parameter(defaultValue = "${session.userProperties}", readonly = true)
  private @Nullable Properties typed;

  /**
   * Where recall.txt, recall.html and recall.json go.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.recall",
      defaultValue = "${project.build.directory}/recall",
      required = true)
  private @Nullable File recall;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    if (recall == null) {
      throw new MojoExecutionException("pellucid.recall says no folder");
    }
    refuseLinkOut(recall, "pellucid.recall");
    PrintedPaths paths = paths(folder);
    RecallReport report = Pellucid.recall(feeds(folder), paths, asked(), words(lot), words(batch));
    Paint paint = MavenPaint.now();
    report
        .findings()
        .forEach(it -> getLog().error(FindingText.of(it, paths, paint).stripTrailing()));
    if (report.problem().isPresent()) {
      throw new MojoFailureException(report.problem().get());
    }
    report.text().lines().map(Unseen::shown).forEach(getLog()::info);
    report.write(recall.toPath());
    getLog().info("pellucid: written to " + recall);
    if (report.notWhole().isPresent()) {
      throw new MojoFailureException(report.notWhole().get());
    }
  }

  private AskedOn asked() throws MojoExecutionException {
    Optional<LocalDate> given = day == null ? Optional.empty() : Optional.of(Console.day(day));
    boolean isTyped = typed != null && typed.containsKey("pellucid.day");
    return isTyped
        ? AskedOn.of(given, Optional.empty(), Console.day(null))
        : AskedOn.of(Optional.empty(), given, Console.day(null));
  }

  private static String words(@Nullable String number) {
    return number == null ? "" : number.strip();
  }
}
