package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.TraceReport;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;

/**
 * Shows which lots are in which batches, through premixes: of one lot the batches that hold it, of
 * one batch the lots in it, of neither the whole table.
 */
@Mojo(name = "trace", threadSafe = true)
public final class TraceMojo extends FolderGoal {
  /**
   * The number of a lot, to see the batches that hold it.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.lot")
  private String lot = "";

  /**
   * The number of a batch, to see the lots in it; of a batch of a premix also where it went.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.batch")
  private String batch = "";

  @Override
  void work(File folder) throws IOException, MojoFailureException {
    TraceReport report =
        Pellucid.trace(folder.toPath(), prefix(folder), lot.strip(), batch.strip());
    report.findings().forEach(it -> getLog().error(FindingText.of(it).stripTrailing()));
    report.text().lines().map(Unseen::shown).forEach(getLog()::info);
    getLog().info("pellucid: " + report.tally());
    if (!report.unknown().isEmpty()) {
      throw new MojoFailureException(
          "no lot or batch of this folder has the number " + String.join(" or ", report.unknown()));
    }
    if (!report.findings().isEmpty()) {
      throw new MojoFailureException("the trace may not be whole: mend these findings first");
    }
  }
}
