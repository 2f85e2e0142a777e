package dev.pellucid.engine.workspace;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Every recipe of a folder once, several at a time, each let go as soon as what is wanted of it is
 * taken down: memory holds what is in flight, and what was taken down. A recipe for which a change
 * of many lines is to be looked for is checked once more, after all others.
 */
public final class Streamed {
  /**
   * Changes of many lines are looked for in so many recipes at most: in those that come first in
   * the order of their paths, whichever thread comes first.
   */
  static final int SOLVED = 20;

  private Streamed() {}

  /**
   * Checks every recipe.
   *
   * @param taken what is wanted of each, made in any thread
   * @return in the order of their paths
   */
  public static <T> List<T> check(Shared shared, Function<Checked, T> taken) {
    List<String> paths = shared.texts().ending(Trees.RECIPE);
    Set<String> solvable = ConcurrentHashMap.newKeySet();
    List<T> all =
        over(
            shared,
            paths,
            Checks::check,
            recipe -> {
              if (isSolvable(recipe)) {
                solvable.add(recipe.path());
              }
              return taken.apply(recipe);
            });
    List<String> first = paths.stream().filter(solvable::contains).limit(SOLVED).toList();
    List<T> solved = over(shared, first, Checks::solve, taken);
    for (int i = 0; i < first.size(); i++) {
      all.set(paths.indexOf(first.get(i)), solved.get(i));
    }
    return all;
  }

  /** Whether a change of many lines would be looked for. */
  static boolean isSolvable(Checked recipe) {
    return recipe.recipe().filter(it -> it.fixing().isSolvable()).isPresent();
  }

  /** The same of some recipes, whose figures and standing alone are wanted. */
  public static <T> List<T> judge(Shared shared, List<String> paths, Function<Checked, T> taken) {
    return over(shared, paths, Checks::judge, taken);
  }

  /** One recipe, figures and standing alone. */
  public static Checked judged(Shared shared, String path) {
    return one(shared, path, Checks::judge);
  }

  /** A way from a text to a recipe. */
  interface Route {
    Checked of(Shared shared, SourceBytes.Decoded text);
  }

  private static <T> List<T> over(
      Shared shared, List<String> paths, Route route, Function<Checked, T> taken) {
    List<T> all = new ArrayList<>();
    paths.parallelStream()
        .map(path -> taken.apply(one(shared, path, route)))
        .forEachOrdered(all::add);
    return all;
  }

  static Checked one(Shared shared, String path, Route route) {
    List<Finding> aboutFile = new ArrayList<>();
    Optional<SourceFile> text = shared.texts().read(path, aboutFile);
    return text.map(it -> route.of(shared, new SourceBytes.Decoded(it, aboutFile)))
        .orElseGet(() -> Checked.unread(path, aboutFile));
  }
}
