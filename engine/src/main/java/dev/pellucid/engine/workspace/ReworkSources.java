package dev.pellucid.engine.workspace;

import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Finished;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.resolve.Reworks;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The finished feeds of recipes that are worked in again, each worked out once and when it is first
 * asked for. It asks for no rework of its own, so that none waits for another.
 */
final class ReworkSources implements Reworks {
  private final Trees trees;
  private final FeedComputer computer;
  private final Map<String, Source> earlier = new HashMap<>();
  private final Map<String, Source> known = new ConcurrentHashMap<>();
  private @Nullable Resolver resolver;

  /**
   * A recipe whose feed is worked in again.
   *
   * @param text of the recipe; empty where it cannot be read
   * @param feed empty where the recipe must be fixed first
   */
  private record Source(Optional<SourceFile> text, Reads reads, Optional<Material.Reworked> feed) {
    static final Source NONE = new Source(Optional.empty(), Reads.NONE, Optional.empty());

    /** Whether the same would come of a later state. */
    boolean holds(Optional<SourceFile> later, Resolver resolver) {
      return text.isPresent()
          && later.filter(it -> it == text.get()).isPresent()
          && resolver.holdForSource(reads);
    }
  }

  ReworkSources(Trees trees, FeedComputer computer, Optional<ReworkSources> earlier) {
    this.trees = trees;
    this.computer = computer;
    earlier.ifPresent(
        one -> {
          this.earlier.putAll(one.earlier);
          this.earlier.putAll(one.known);
        });
  }

  /** Called once, before any recipe is resolved. */
  void resolveWith(Resolver made) {
    this.resolver = made;
  }

  @Override
  public Optional<Material.Reworked> of(String recipe) {
    return source(recipe).feed();
  }

  @Override
  public Optional<?> state(String recipe) {
    return Optional.of(source(recipe));
  }

  @Override
  public Reads behind(String recipe) {
    return source(recipe).reads();
  }

  private Source source(String recipe) {
    return known.computeIfAbsent(recipe, this::find);
  }

  private Source find(String recipe) {
    Optional<String> path = trees.path(recipe);
    Optional<SourceFile> text = path.flatMap(it -> trees.texts().read(it, new ArrayList<>()));
    return Optional.ofNullable(earlier.get(recipe))
        .filter(one -> one.holds(text, resolver()))
        .orElseGet(() -> path.map(it -> make(it, text)).orElse(Source.NONE));
  }

  private Source make(String path, Optional<SourceFile> text) {
    Optional<RecipeFile> tree = trees.recipe(path, new ArrayList<>());
    if (tree.isEmpty()) {
      return Source.NONE;
    }
    Resolution<ResolvedRecipe> source = resolver().source(tree.get());
    return new Source(
        text,
        source.reads(),
        source.thing().flatMap(one -> computer.compute(one).feed()).map(Finished::of));
  }

  private Resolver resolver() {
    if (resolver == null) {
      throw new IllegalStateException("no recipe is resolved before premixes and profiles are");
    }
    return resolver;
  }
}
