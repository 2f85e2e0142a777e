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
  private final Memos<T> memos;

  /** For which changes of many lines were looked for. */
  private final Memos<T> solved;

  /** How far a recipe is looked at. */
  public enum Route {
    /** Figures and standing alone. */
    JUDGE(Checks::judge, Checks::judge),
    /** With what every rule says. */
    CHECK(Checks::check, Checks::solve);

    private final Streamed.Route of;
    private final Streamed.Route solving;

    Route(Streamed.Route of, Streamed.Route solving) {
      this.of = of;
      this.solving = solving;
    }
  }

  /**
   * What is kept of a recipe.
   *
   * @param text empty where it cannot be read
   * @param solvable whether a change of many lines would be looked for
   */
  private record Memo<T>(Optional<SourceFile> text, Reads reads, T taken, boolean solvable) {
    boolean holds(Optional<SourceFile> later, Shared shared) {
      return text.isPresent()
          && later.filter(it -> it == text.get()).isPresent()
          && shared.resolver().hold(reads);
    }
  }

  /** What is kept of an earlier state, and of this one. */
  private record Memos<T>(Map<String, Memo<T>> earlier, Map<String, Memo<T>> now) {
    static <T> Memos<T> none() {
      return new Memos<>(Map.of(), new ConcurrentHashMap<>());
    }

    Memos<T> later() {
      Map<String, Memo<T>> known = new HashMap<>(earlier);
      known.putAll(now);
      return new Memos<>(known, new ConcurrentHashMap<>());
    }
  }

  private Kept(
      Shared shared, Route route, Function<Checked, T> taken, Memos<T> memos, Memos<T> solved) {
    this.shared = shared;
    this.route = route;
    this.taken = taken;
    this.memos = memos;
    this.solved = solved;
  }

  /**
   * The first state.
   *
   * @param texts are held in memory from now on
   * @param taken what is kept of each recipe, made in any thread
   */
  public static <T> Kept<T> of(Texts texts, Days days, Route route, Function<Checked, T> taken) {
    Shared shared = Shared.of(ReadFolder.of(texts.held()), days);
    return new Kept<>(shared, route, taken, Memos.none(), Memos.none());
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
    return new Kept<>(shared.next(texts.held()), by, taking, memos.later(), solved.later());
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
    if (!shared.texts().has(path)) {
      return Optional.empty();
    }
    Memo<T> memo = memo(path);
    return Optional.of(
        memo.solvable() && isAmongFirst(path)
            ? solved.now().computeIfAbsent(path, it -> find(solved, it, route.solving)).taken()
            : memo.taken());
  }

  private Memo<T> memo(String path) {
    return memos.now().computeIfAbsent(path, it -> find(memos, it, route.of));
  }

  /** Whether it is among those, in the order of their paths, for which many lines are tried. */
  private boolean isAmongFirst(String path) {
    int before = 0;
    for (String other : recipes()) {
      if (other.equals(path) || before == Streamed.SOLVED) {
        break;
      }
      before += memo(other).solvable() ? 1 : 0;
    }
    return before < Streamed.SOLVED;
  }

  /** What is kept of each recipe, in the order of their paths. */
  public List<T> all() {
    List<T> all = new ArrayList<>();
    recipes().parallelStream().map(path -> recipe(path).orElseThrow()).forEachOrdered(all::add);
    return all;
  }

  private Memo<T> find(Memos<T> kept, String path, Streamed.Route by) {
    Optional<SourceFile> text = shared.texts().read(path, new ArrayList<>());
    return Optional.ofNullable(kept.earlier().get(path))
        .filter(memo -> memo.holds(text, shared))
        .orElseGet(() -> make(path, text, by));
  }

  private Memo<T> make(String path, Optional<SourceFile> text, Streamed.Route by) {
    Checked recipe = Streamed.one(shared, path, by);
    // Where this program broke nobody knows what was looked up.
    boolean known = recipe.fault().isEmpty();
    return new Memo<>(
        text.filter(it -> known), recipe.reads(), taken.apply(recipe), Streamed.isSolvable(recipe));
  }
}
