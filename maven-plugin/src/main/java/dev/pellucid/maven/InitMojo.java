package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.InitReport;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Begins a folder of feeds: a pom.xml, settings, a recipe and its premixes that pass, prices to be
 * replaced, what build servers and git need, and a page for colleagues. It needs no project, writes
 * over nothing, and checks what came of it. A folder that has feeds gets only what belongs round
 * them.
 *
 * @since 0.1.0
 */
@Mojo(name = "init", requiresProject = false, aggregator = true, threadSafe = true)
public final class InitMojo extends StatingGoal {
  /**
   * The folder that is to hold the feeds; the current one where none is given. It must be there,
   * and may hold other files.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.folder",
      defaultValue = "${session.executionRootDirectory}",
      required = true)
  private @Nullable File folder;

  /** The folder where Maven was started. */
  @Parameter(defaultValue = "${session.executionRootDirectory}", readonly = true)
  private @Nullable File started;

  /**
   * For which fish the first recipe is, as common-carp or nile-tilapia.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.species")
  private String species = "";

  /**
   * Whose law the feeds are held to: none or eu.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.jurisdiction")
  private String jurisdiction = "";

  /**
   * In which currency prices are, in three capital letters; EUR where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.currency")
  private String currency = "";

  /**
   * What the folder is called on sheets; its own name where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.name")
  private String name = "";

  /**
   * The day from which the first prices are, as 2027-03-31; today where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /** The version of this plugin. */
  @Parameter(defaultValue = "${plugin.version}", readonly = true)
  private @Nullable String version;

  @Override
  public void execute() throws MojoExecutionException, MojoFailureException {
    File place = folder;
    if (place == null) {
      throw new MojoExecutionException("say which folder with -Dpellucid.folder=feeds");
    }
    stating(() -> begin(place.toPath()));
  }

  private void begin(Path root) throws IOException, MojoExecutionException, MojoFailureException {
    LocalDate today = Console.day(day);
    InitReport report = Pellucid.init(root, wishes(), today, version == null ? "" : version);
    if (!report.problems().isEmpty()) {
      throw new MojoFailureException(String.join("\n", report.problems()));
    }
    InitReport.Written written = report.write(root);
    print(written.done());
    CheckReport checked = Pellucid.check(ComingAlong.under(FolderState.at(root)), today);
    Console.print(checked, PathRoot.paths(root.toFile(), null, started), getLog());
    print(written.next(started == null ? root : started.toPath()));
  }

  private Map<String, String> wishes() {
    return Map.of(
        "species", species, "jurisdiction", jurisdiction, "currency", currency, "name", name);
  }

  private void print(List<String> lines) {
    lines.stream().map(Unseen::shown).forEach(getLog()::info);
  }
}
