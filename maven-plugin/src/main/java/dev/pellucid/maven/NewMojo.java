package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.NewReport;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Writes a new file of one thing: a recipe, an ingredient, a premix, the record of a planned batch,
 * a lot, or a copy of a file that comes with the plugin. It is complete but for what a person must
 * give, and the check names each of these places. Nothing is written over.
 *
 * @since 0.1.0
 */
@Mojo(name = "new", threadSafe = true)
public final class NewMojo extends FolderGoal {
  /**
   * The code of a new recipe.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.recipe")
  private @Nullable String recipe;

  /**
   * The name of a new ingredient; pellucid.group says what kind it is.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.ingredient")
  private @Nullable String ingredient;

  /**
   * The code of a new premix.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.premix")
  private @Nullable String premix;

  /**
   * The code of a recipe or premix of which a batch is planned on pellucid.day.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.batch")
  private @Nullable String batch;

  /**
   * The number of a lot that comes in on pellucid.day; pellucid.of says of what.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.lot")
  private @Nullable String lot;

  /**
   * A file that comes with the plugin and is to be changed here, as practice/bounds.yaml.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.own")
  private @Nullable String own;

  /**
   * For which species a new recipe is; the one of all recipes where they are for one.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.species")
  private @Nullable String species;

  /**
   * The code of the recipe or premix whose lines and steps a new one gets, without its figures.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.like")
  private @Nullable String like;

  /**
   * The group of a new ingredient, as oilseed-meals.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.group")
  private @Nullable String group;

  /**
   * The ingredient that a lot is of.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.of")
  private @Nullable String of;

  /**
   * The day on which a lot comes in or a batch is planned, as 2027-03-31. Today where none is
   * given.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.day")
  private @Nullable String day;

  @Override
  void work(File folder) throws IOException, MojoExecutionException, MojoFailureException {
    NewReport report = Pellucid.newFile(feeds(folder), Console.day(day), typed());
    if (report.problem().isPresent()) {
      throw new MojoFailureException(Unseen.shown(report.problem().get()));
    }
    List<String> done = report.write(folder.toPath());
    if (done.isEmpty()) {
      throw new MojoFailureException(
          "nothing was written, for something bears the name already: " + report.path());
    }
    done.forEach(line -> getLog().info("pellucid: " + Unseen.shown(line)));
  }

  private Map<String, String> typed() {
    Map<String, String> typed = new TreeMap<>();
    put(typed, "recipe", recipe);
    put(typed, "ingredient", ingredient);
    put(typed, "premix", premix);
    put(typed, "batch", batch);
    put(typed, "lot", lot);
    put(typed, "own", own);
    put(typed, "species", species);
    put(typed, "like", like);
    put(typed, "group", group);
    put(typed, "of", of);
    return typed;
  }

  private static void put(Map<String, String> typed, String name, @Nullable String value) {
    if (value != null) {
      typed.put(name, value);
    }
  }
}
