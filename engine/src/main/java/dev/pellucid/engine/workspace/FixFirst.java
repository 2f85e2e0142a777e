package dev.pellucid.engine.workspace;

import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which files keep a recipe from being computed, where they are not its own: of a feed that is
 * worked in again those that it hangs on, and its own where that is at fault.
 *
 * <p>What is worked in again is made without its own rework, so no other feed stands behind it.
 */
final class FixFirst {
  private final Trees trees;
  private final Resolver resolver;

  FixFirst(Trees trees, Resolver resolver) {
    this.trees = trees;
    this.resolver = resolver;
  }

  /** The names of the files, of all that the recipe at a path looked up. */
  List<String> of(String path, Reads reads) {
    Set<String> files = new LinkedHashSet<>();
    for (String file : resolver.brokenBefore(Trees.stem(path), reads)) {
      if (file.endsWith(Trees.RECIPE)) {
        files.addAll(behind(file));
      } else {
        files.add(file);
      }
    }
    return List.copyOf(files);
  }

  private Set<String> behind(String file) {
    String code = file.substring(0, file.length() - Trees.RECIPE.length());
    List<Finding> own = new ArrayList<>();
    Optional<RecipeFile> tree = trees.path(code).flatMap(path -> trees.recipe(path, own));
    Optional<Resolution<ResolvedRecipe>> source = tree.map(resolver::source);
    source.ifPresent(one -> own.addAll(one.findings()));
    Set<String> files = new LinkedHashSet<>();
    source.ifPresent(one -> files.addAll(resolver.brokenData(one.reads())));
    if (files.isEmpty() || own.stream().anyMatch(it -> it.severity() == Severity.ERROR)) {
      files.add(file);
    }
    return files;
  }
}
