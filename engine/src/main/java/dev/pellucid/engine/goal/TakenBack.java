package dev.pellucid.engine.goal;

import dev.pellucid.engine.compare.Alike;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compare.RecipeChange.Cause;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.DependsOn;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Finds which of the changed files moved a feed, by leaving each of them as it was and computing
 * the feed again: where it comes out the same, the file had no part in it.
 *
 * <p>A file is looked at only where the feed could hang on it. Of more than a hundred changed files
 * each that the feed could hang on is named, and none is left as it was.
 */
final class TakenBack implements Comparison.Causes {
  private static final int MOST = 100;

  private final ComparedState before;
  private final ComparedState after;
  private final Set<String> paths;
  private final Map<String, ComparedState> without = new ConcurrentHashMap<>();
  private final Map<String, ComparedState> ruledWithout = new ConcurrentHashMap<>();

  TakenBack(ComparedState before, ComparedState after) {
    this.before = before;
    this.after = after;
    this.paths = differing(before, after);
  }

  @Override
  public String note() {
    return paths.size() > MOST
        ? paths.size()
            + " files changed, of which none was taken back to see what it did: each that a feed"
            + " could depend on is named as a cause, and what it adds to the cost is not given"
        : "";
  }

  @Override
  public Set<String> differing() {
    return paths;
  }

  @Override
  public List<Cause> of(RecipeState was, RecipeState is) {
    boolean moved = !was.path().equals(is.path());
    boolean says = moved || !after.saysOf(is.path(), before);
    List<Cause> causes = new ArrayList<>();
    for (String path : paths) {
      boolean own = path.equals(was.path()) || path.equals(is.path());
      if (own && moved) {
        if (path.equals(is.path()) && !is.saysTheSameAs(was)) {
          causes.add(new Cause(path, OptionalDouble.empty()));
        }
      } else if (is.hangsOn().test(path) || was.hangsOn().test(path)) {
        cause(path, is, says).ifPresent(causes::add);
      }
    }
    return causes.size() == 1 && causes.get(0).path().equals(is.path()) ? List.of() : causes;
  }

  /**
   * @param says whether the rules say something else of it, or something else is printed of it;
   *     then it is looked at by the rules too where its figures are the same without the file
   */
  private Optional<Cause> cause(String path, RecipeState is, boolean says) {
    if (paths.size() > MOST) {
      return Optional.of(new Cause(path, OptionalDouble.empty()));
    }
    Optional<FeedFigures> other = without.computeIfAbsent(path, this::without).figures(is.path());
    if (other.isEmpty() || is.figures().isEmpty()) {
      boolean same = other.isEmpty() && is.figures().isEmpty();
      return same
          ? ruledCause(path, is, says)
          : Optional.of(new Cause(path, OptionalDouble.empty()));
    }
    FeedFigures with = is.figures().get();
    return Alike.are(other.get(), with)
        ? ruledCause(path, is, says)
        : Optional.of(
            new Cause(
                path,
                OptionalDouble.of(with.account().costPerKg() - other.get().account().costPerKg())));
  }

  private Optional<Cause> ruledCause(String path, RecipeState is, boolean says) {
    return says && !ruledWithout.computeIfAbsent(path, this::ruledWithout).saysOf(is.path(), after)
        ? Optional.of(new Cause(path, OptionalDouble.empty()))
        : Optional.empty();
  }

  private ComparedState ruledWithout(String path) {
    return after.ruledWith(List.of(path), before);
  }

  private ComparedState without(String path) {
    return after.with(List.of(path), before);
  }

  /** Paths of files that say something else; one that only lies elsewhere does not. */
  private static Set<String> differing(ComparedState before, ComparedState after) {
    Map<String, List<String>> then = words(before);
    Map<String, List<String>> now = words(after);
    Set<String> paths = new TreeSet<>(then.keySet());
    paths.addAll(now.keySet());
    paths.removeIf(
        path -> isWithin(now, path, then.get(path)) && isWithin(then, path, now.get(path)));
    return paths;
  }

  /** Whether a file of that name says the same there, or there was none to begin with. */
  private static boolean isWithin(
      Map<String, List<String>> state, String path, @Nullable List<String> words) {
    if (words == null) {
      return true;
    }
    List<String> there = state.get(path);
    return there != null
        ? there.equals(words)
        : state.entrySet().stream()
            .anyMatch(
                other -> name(other.getKey()).equals(name(path)) && other.getValue().equals(words));
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  private static Map<String, List<String>> words(ComparedState state) {
    Map<String, List<String>> words = new TreeMap<>();
    Texts folder = state.texts();
    folder.data().forEach(path -> words.put(path, List.of(state.text(path))));
    for (String kind : List.of(".premix", ".limits", ".recipe")) {
      folder.ending(kind).forEach(path -> words.put(path, state.words(path)));
    }
    words.keySet().removeIf(path -> !DependsOn.bearsOnFeeds(path));
    return words;
  }
}
