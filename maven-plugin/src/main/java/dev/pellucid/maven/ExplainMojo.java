package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.ExplainReport;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Shows where a figure of a recipe comes from, line by line down to the source of each content; or
 * what a finding means, with a wrong and a right example.
 *
 * @since 0.1.0
 */
@Mojo(name = "explain", threadSafe = true)
public final class ExplainMojo extends FolderGoal {
  /**
   * The code of the recipe whose figure is explained.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.recipe")
  private String recipe = "";

  /**
   * The figure, named as a limit names it: crude-protein, lysine : crude-protein, cost; or yield.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.figure")
  private String figure = "";

  /**
   * The code of a finding, in place of a recipe and a figure.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.rule")
  private String rule = "";

  /**
   * The day that judges prices, as 2027-03-31. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /** What a finding means can be asked anywhere. */
  @Override
  boolean needsFeeds() {
    return rule.isBlank();
  }

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    if (rule.isBlank() && (recipe.isBlank() || figure.isBlank())) {
      throw new MojoFailureException(
          "say what to explain: -Dpellucid.recipe=CG-36 -Dpellucid.figure=crude-protein, or"
              + " -Dpellucid.rule=below-minimum");
    }
    ExplainReport report =
        rule.isBlank()
            ? Pellucid.explain(feeds(folder), Console.day(day), recipe.strip(), figure.strip())
            : Pellucid.explainRule(rule.strip());
    if (report.problem().isPresent()) {
      throw new MojoFailureException(report.problem().get());
    }
    report.text().lines().map(Unseen::shown).forEach(getLog()::info);
  }
}
