package dev.pellucid.engine.compare;

import dev.pellucid.engine.compare.RecipeChange.How;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.compare.RecipeChange.Shifted;
import dev.pellucid.engine.compare.RecipeState.Amount;
import dev.pellucid.engine.compare.RecipeState.FeedFigures;
import dev.pellucid.engine.compare.RecipeState.Held;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Two states of a folder held against each other. A recipe of which neither words nor figures
 * changed is left out, however its text was laid out.
 *
 * @param changes the gravest first, then by what they do to the cost
 */
public record Comparison(List<RecipeChange> changes) {
  private static final double CLOSE = 1e-9;
  private static final double TIGHT = 0.01;

  public Comparison {
    changes = List.copyOf(changes);
  }

  /**
   * Compares.
   *
   * @param files paths of data, premix and limits files that differ
   */
  public static Comparison of(
      Map<String, RecipeState> before, Map<String, RecipeState> after, Set<String> files) {
    List<RecipeChange> changes = new ArrayList<>();
    Set<String> codes = new TreeSet<>(before.keySet());
    codes.addAll(after.keySet());
    for (String code : codes) {
      change(Optional.ofNullable(before.get(code)), Optional.ofNullable(after.get(code)), files)
          .ifPresent(changes::add);
    }
    changes.sort(
        Comparator.comparingInt(RecipeChange::rank)
            .thenComparing(change -> -Math.abs(change.costMoved()))
            .thenComparing(RecipeChange::code));
    return new Comparison(changes);
  }

  private static Optional<RecipeChange> change(
      Optional<RecipeState> before, Optional<RecipeState> after, Set<String> files) {
    boolean edited = !before.map(RecipeState::layout).equals(after.map(RecipeState::layout));
    Optional<FeedFigures> was = before.flatMap(RecipeState::figures);
    Optional<FeedFigures> is = after.flatMap(RecipeState::figures);
    RecipeState shown = after.or(() -> before).orElseThrow();
    How how = how(before, after, edited);
    List<String> because =
        how == How.ADDED || how == How.REMOVED ? List.of() : because(shown, files);
    if (was.isEmpty() || is.isEmpty()) {
      boolean same = before.isPresent() && after.isPresent() && was.isEmpty() && is.isEmpty();
      return same && !edited
          ? Optional.empty()
          : Optional.of(
              new RecipeChange(
                  shown.code(),
                  how,
                  because,
                  List.of(),
                  List.of(),
                  List.of(),
                  List.of(),
                  List.of(),
                  cost(was),
                  cost(is),
                  List.of()));
    }
    RecipeChange change = both(shown.code(), how, because, was.get(), is.get());
    return edited || moves(change) ? Optional.of(change) : Optional.empty();
  }

  private static How how(
      Optional<RecipeState> before, Optional<RecipeState> after, boolean edited) {
    if (before.isEmpty() || after.isEmpty()) {
      return before.isEmpty() ? How.ADDED : How.REMOVED;
    }
    boolean was = before.get().figures().isPresent();
    boolean is = after.get().figures().isPresent();
    if (was != is) {
      return was ? How.BROKEN : How.MENDED;
    }
    return edited ? How.EDITED : How.BY_DATA;
  }

  private static OptionalDouble cost(Optional<FeedFigures> figures) {
    return figures.stream().mapToDouble(FeedFigures::costPerKg).findFirst();
  }

  /** Files of what it looks up, and those that every recipe hangs on. */
  private static List<String> because(RecipeState state, Set<String> files) {
    return files.stream().filter(path -> bearsOn(state, path)).toList();
  }

  private static boolean bearsOn(RecipeState state, String path) {
    if (path.startsWith("lots/") || path.startsWith("batches/")) {
      return false;
    }
    String file = path.substring(path.lastIndexOf('/') + 1);
    boolean named =
        path.startsWith("ingredients/") || file.endsWith(".premix") || file.endsWith(".limits");
    String stem = file.substring(0, Math.max(0, file.lastIndexOf('.')));
    return !named || state.reads().contains(stem) || state.isHeldBy(stem);
  }

  private static boolean moves(RecipeChange change) {
    return Math.abs(change.costMoved()) > CLOSE
        || !change.lines().isEmpty()
        || !change.moved().isEmpty()
        || !change.broken().isEmpty()
        || !change.met().isEmpty()
        || !change.tight().isEmpty()
        || !change.waivers().isEmpty();
  }

  private static RecipeChange both(
      String code, How how, List<String> because, FeedFigures was, FeedFigures is) {
    List<LimitMoved> broken = new ArrayList<>();
    List<LimitMoved> met = new ArrayList<>();
    List<LimitMoved> tight = new ArrayList<>();
    is.limits()
        .forEach(
            (key, now) -> {
              Held then = was.limits().getOrDefault(key, now);
              boolean fresh = !was.limits().containsKey(key);
              LimitMoved moved = new LimitMoved(then, now);
              if (!now.keeps() && (then.keeps() || fresh)) {
                broken.add(moved);
              } else if (now.keeps() && !then.keeps()) {
                met.add(moved);
              } else if (now.keeps() && now.room() < TIGHT && then.room() >= TIGHT) {
                tight.add(moved);
              }
            });
    return new RecipeChange(
        code,
        how,
        because,
        shifted(was, is),
        moved(was, is),
        broken,
        met,
        tight,
        OptionalDouble.of(was.costPerKg()),
        OptionalDouble.of(is.costPerKg()),
        waivers(was, is));
  }

  private static List<Shifted> shifted(FeedFigures was, FeedFigures is) {
    Set<String> names = new LinkedHashSet<>(was.lines().keySet());
    names.addAll(is.lines().keySet());
    List<Shifted> shifted = new ArrayList<>();
    for (String name : names) {
      String before = was.lines().getOrDefault(name, "");
      String after = is.lines().getOrDefault(name, "");
      if (!before.equals(after)) {
        shifted.add(new Shifted(name, before, after));
      }
    }
    return shifted;
  }

  private static List<Moved> moved(FeedFigures was, FeedFigures is) {
    List<Moved> moved = new ArrayList<>();
    is.nutrients()
        .forEach(
            (name, now) -> {
              Amount then = was.nutrients().getOrDefault(name, new Amount(0, now.unit()));
              double largest = Math.max(Math.abs(then.base()), Math.abs(now.base()));
              if (Math.abs(now.base() - then.base()) > CLOSE * largest) {
                moved.add(new Moved(name, then.base(), now.base(), now.unit()));
              }
            });
    moved.sort(Comparator.comparingDouble(Comparison::proportion).reversed());
    return moved;
  }

  private static double proportion(Moved one) {
    double largest = Math.max(Math.abs(one.before()), Math.abs(one.after()));
    return largest == 0 ? 0 : Math.abs(one.after() - one.before()) / largest;
  }

  private static List<String> waivers(FeedFigures was, FeedFigures is) {
    List<String> waivers = new ArrayList<>();
    is.waivers().stream()
        .filter(one -> !was.waivers().contains(one))
        .forEach(one -> waivers.add("+ " + one));
    was.waivers().stream()
        .filter(one -> !is.waivers().contains(one))
        .forEach(one -> waivers.add("- " + one));
    return waivers;
  }
}
