package dev.pellucid.engine;

import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which files keep a recipe from being computed, where they are not its own: of a feed that is
 * worked in again those that it hangs on, and its own where that is at fault.
 */
final class MendFirst {
  private static final String RECIPE = ".recipe";

  private final FeedTrees trees;
  private final Resolver resolver;

  MendFirst(FeedTrees trees, Resolver resolver) {
    this.trees = trees;
    this.resolver = resolver;
  }

  /** The names of the files, of all that the recipe at a path looked up. */
  List<String> of(String path, SortedSet<String> read) {
    String code = new SourceFile(path, "").stem();
    return List.copyOf(of(code, read, new TreeSet<>(Set.of(code))));
  }

  private Set<String> of(String code, SortedSet<String> read, Set<String> above) {
    Set<String> files = new LinkedHashSet<>();
    for (String file : resolver.brokenBefore(code, read)) {
      String worked = file.substring(0, Math.max(0, file.length() - RECIPE.length()));
      if (file.endsWith(RECIPE) && above.add(worked)) {
        files.addAll(behind(worked, file, above));
      } else {
        files.add(file);
      }
    }
    return files;
  }

  private Set<String> behind(String code, String file, Set<String> above) {
    List<Finding> own = new ArrayList<>();
    Optional<RecipeFile> tree = trees.path(code).flatMap(path -> trees.recipe(path, own));
    Optional<Resolution<ResolvedRecipe>> resolution = tree.map(resolver::recipe);
    resolution.ifPresent(one -> own.addAll(one.findings()));
    Set<String> files = new LinkedHashSet<>();
    resolution.ifPresent(one -> files.addAll(of(code, one.read(), above)));
    if (files.isEmpty() || own.stream().anyMatch(it -> it.severity() == Severity.ERROR)) {
      files.add(file);
    }
    return files;
  }
}
