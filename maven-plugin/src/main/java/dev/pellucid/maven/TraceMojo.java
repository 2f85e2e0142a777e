package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.show.FindingText;
import dev.pellucid.show.Paint;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Shows which lots are in which batches, through premixes and rework, with kg: of one lot the
 * batches that hold it or may hold it, of one batch the lots in it and where it went, of neither
 * what is in every batch. Fails where a number is not known, and where a record cannot be searched.
 *
 * @since 0.1.0
 */
@Mojo(name = "trace", threadSafe = true)
public final class TraceMojo extends FolderGoal {
  /**
   * The number of a lot of an ingredient, or of a batch made here, to see the batches that hold it.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.lot")
  private @Nullable String lot;

  /**
   * The number of a batch, to see the lots in it and where it went.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.batch")
  private @Nullable String batch;

  @Override
  void work(File folder) throws IOException, MojoFailureException {
    String lotAsked = asked(lot, "pellucid.lot");
    String batchAsked = asked(batch, "pellucid.batch");
    PrintedPaths paths = paths(folder);
    TraceReport report = Pellucid.trace(feeds(folder), paths, lotAsked, batchAsked);
    Paint paint = MavenPaint.now();
    report
        .findings()
        .forEach(it -> getLog().error(FindingText.of(it, paths, paint).stripTrailing()));
    report.text().lines().map(Unseen::shown).forEach(getLog()::info);
    List<String> failed = new ArrayList<>(report.unknown());
    if (!report.unsearched().isEmpty()) {
      failed.add(
          "the trace may not be whole, fix these first: " + String.join("; ", report.unsearched()));
    }
    if (!failed.isEmpty()) {
      throw new MojoFailureException(String.join("; ", failed));
    }
  }

  /** A parameter without a number behind it is a slip, as of a variable that holds none. */
  private static String asked(@Nullable String number, String parameter)
      throws MojoFailureException {
    if (number == null) {
      return "";
    }
    if (number.isBlank()) {
      throw new MojoFailureException(
          "-D"
              + parameter
              + " is empty; write a number behind it, or leave it out to see what is in every"
              + " batch");
    }
    return number.strip();
  }
}
