package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * A folder in one state, of which something is kept for each recipe, worked out when it is first
 * asked for. Of a later state only that is worked out anew which hangs on what changed: what was
 * kept of a recipe holds while its text and all that it looked up are the very same objects.
 *
 * <p>It is a value; a changed folder is another one. What is kept must not hold the folder itself.
 */
public final class Kept<T> {
  private final Shared shared;
  private final Route route;
  private final Function<Checked, T> taken;
  private final Map<String, Memo<T>> earlier;
  private final Map<String, Memo<T>> now = new ConcurrentHashMap<>();

  /** How far a recipe is looked at. */
  public enum Route {
    /** Figures and standing alone. */
    JUDGE(Checks::judge),
    /** With what every rule says. */
    CHECK(Checks::check);

    private final Streamed.Route of;

    Route(Streamed.Route of) {
      this.of = of;
    }
  }

  /**
   * What is kept of a recipe.
   *
   * @param text empty where it cannot be read
   */
  private record Memo<T>(Optional<SourceFile> text, Reads reads, T taken) {
    boolean holds(Optional<SourceFile> later, Shared shared) {
      return text.isPresent()
          && later.filter(it -> it == text.get()).isPresent()
          && shared.resolver().hold(reads);
    }
  }

  private Kept(
      Shared shared, Route route, Function<Checked, T> taken, Map<String, Memo<T>> earlier) {
    this.shared = shared;
    this.route = route;
    this.taken = taken;
    this.earlier = earlier;
  }

  /**
   * The first state.
   *
   * @param texts are held in memory from now on
   * @param taken what is kept of each recipe, made in any thread
   */
  public static <T> Kept<T> of(Texts texts, Days days, Route route, Function<Checked, T> taken) {
    Shared shared = Shared.of(ReadFolder.of(texts.held()), days);
    return new Kept<>(shared, route, taken, Map.of());
  }

  /** A later state. */
  public Kept<T> with(Texts texts) {
    return with(texts, route, taken);
  }

  /**
   * Another state, of which what must be worked out anew is looked at by another route. What is
   * kept of the rest is as it was taken down here, so no more may be wanted of it than that.
   */
  public Kept<T> with(Texts texts, Route by, Function<Checked, T> taking) {
    Map<String, Memo<T>> known = new HashMap<>(earlier);
    known.putAll(now);
    return new Kept<>(shared.next(texts.held()), by, taking, known);
  }

  public Shared shared() {
    return shared;
  }

  /** Paths of all recipes, in order. */
  public List<String> recipes() {
    return shared.texts().ending(Trees.RECIPE);
  }

  /** What is kept of the recipe at a path; empty where there is none. */
  public Optional<T> recipe(String path) {
    return shared.texts().has(path)
        ? Optional.of(now.computeIfAbsent(path, this::find).taken())
        : Optional.empty();
  }

  /** What is kept of each recipe, in the order of their paths. */
  public List<T> all() {
    List<T> all = new ArrayList<>();
    recipes().parallelStream().map(path -> recipe(path).orElseThrow()).forEachOrdered(all::add);
    return all;
  }

  private Memo<T> find(String path) {
    Optional<SourceFile> text = shared.texts().read(path, new ArrayList<>());
    return Optional.ofNullable(earlier.get(path))
        .filter(memo -> memo.holds(text, shared))
        .orElseGet(() -> make(path, text));
  }

  private Memo<T> make(String path, Optional<SourceFile> text) {
    Checked recipe = Streamed.one(shared, path, route.of);
    // Where this program broke nobody knows what was looked up.
    boolean known = recipe.fault().isEmpty();
    return new Memo<>(text.filter(it -> known), recipe.reads(), taken.apply(recipe));
  }
}
