package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.LeastCostReport;
import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest recipe that keeps every limit as check judges it, as a change of the text, and
 * tells why: what each limit costs, what each ingredient is worth, what the change does. Lines with
 * within, and the rest, are free; all others stay as they are.
 *
 * @since 0.1.0
 */
@Mojo(name = "least-cost", threadSafe = true)
public final class LeastCostMojo extends FolderGoal {
  /**
   * The code of the only recipe to ask for; all where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.recipe")
  private String recipe = "";

  /**
   * Lines that may change too though they tell no within, parted by commas.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.free")
  private @Nullable String free;

  /**
   * Ingredients that are not in the recipe and may come in, parted by commas.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.try")
  private @Nullable String offered;

  /**
   * Ingredients that do not come this week, parted by commas.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.without")
  private @Nullable String without;

  /**
   * By how much a line, and all lines together, may move at most: 3 points. Any where none is
   * given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.move")
  private @Nullable String move;

  /**
   * What a change must save to be worth its trouble: 1 EUR/t.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.worth")
  private @Nullable String worth;

  /**
   * What must stay as it is printed: label, for what it declares and the order of its list.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.keep")
  private @Nullable String keep;

  /**
   * In which part of batches limits are kept that do not say so themselves: in 90 % of batches.
   * Where none is given they are kept on average.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.margin")
  private @Nullable String margin;

  /**
   * A price or a limit that goes from here to there: fish-meal-65 1.2 to 2.4 EUR/kg, or
   * crude-protein 33 to 36 %. One recipe must be named.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.sweep")
  private @Nullable String sweep;

  /**
   * Whether a batch may take no more of a line than there is in the store: yes or no.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.stock", defaultValue = "no")
  private String stock = "no";

  /**
   * Which prices count: fresh, so that nothing is asked where a price of a free line is older than
   * 60 days, or any.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.prices", defaultValue = "fresh")
  private String prices = "fresh";

  /**
   * The day that judges waivers and prices, as 2027-03-31. Today's where none is given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  /**
   * Whether the changes are written into the recipes.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.write", defaultValue = "false")
  private boolean write;

  /**
   * Where least-cost.txt, least-cost.md, least-cost.html, least-cost.json and the page of each feed
   * go.
   *
   * @since 0.1.0
   */
  @Parameter(
      property = "pellucid.leastCost",
      defaultValue = "${project.build.directory}/least-cost",
      required = true)
  private @Nullable File leastCost;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    if (leastCost == null) {
      throw new MojoExecutionException("pellucid.leastCost says no folder");
    }
    refuseLinkOut(leastCost, "pellucid.leastCost");
    PrintedPaths paths = paths(folder);
    LeastCostReport report =
        Pellucid.leastCost(feeds(folder), Console.day(day), recipe.strip(), wishes(), paths);
    if (report.problem().isPresent()) {
      throw new MojoFailureException(report.problem().get());
    }
    show(report.shown());
    report.write(leastCost.toPath());
    getLog().info("pellucid: written to " + leastCost);
    if (write) {
      changed(report.apply(folder.toPath()), paths);
    }
    report.next(write).forEach(getLog()::info);
  }

  private Map<String, String> wishes() {
    return new Wished()
        .with("free", free)
        .with("try", offered)
        .with("without", without)
        .with("move", move)
        .with("worth", worth)
        .with("keep", keep)
        .with("margin", margin)
        .with("sweep", sweep)
        .with("stock", stock)
        .with("prices", prices)
        .words();
  }
}
