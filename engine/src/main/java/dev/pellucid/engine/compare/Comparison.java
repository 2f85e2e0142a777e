package dev.pellucid.engine.compare;

import dev.pellucid.engine.compare.RecipeChange.Cause;
import dev.pellucid.engine.compare.RecipeChange.How;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Two states of a folder held against each other. A recipe of which neither words nor figures
 * changed is left out, however its text was laid out.
 *
 * @param notices what must be known before the rest is believed
 * @param changes the gravest first, then by what they do to the cost
 * @param causesNote what is to be known of the files that are named as causes; empty for nothing
 */
public record Comparison(List<String> notices, List<RecipeChange> changes, String causesNote) {
  public Comparison {
    notices = List.copyOf(notices);
    changes = List.copyOf(changes);
  }

  /** Finds which files moved a recipe; asked by several threads at once. */
  public interface Causes {
    /** What is to be known of them all, in a sentence without its point; empty where nothing is. */
    String note();

    /** The files without whose change it would be another; none where that is its own alone. */
    List<Cause> of(RecipeState before, RecipeState after);
  }

  /** Compares; a recipe that is gone is sought among the new ones under another code. */
  public static Comparison of(
      List<String> notices,
      Map<String, RecipeState> before,
      Map<String, RecipeState> after,
      Causes causes) {
    Map<String, String> formerly = Renames.between(before, after);
    Set<String> codes = new TreeSet<>(before.keySet());
    codes.addAll(after.keySet());
    codes.removeAll(formerly.values());
    return new Comparison(
        notices,
        codes.parallelStream()
            .flatMap(
                code ->
                    change(before.get(formerly.getOrDefault(code, code)), after.get(code), causes)
                        .stream())
            .sorted(
                Comparator.comparingInt(RecipeChange::rank)
                    .thenComparing(change -> -Math.abs(change.costMoved()))
                    .thenComparing(RecipeChange::code))
            .toList(),
        causes.note());
  }

  private static Optional<RecipeChange> change(
      @Nullable RecipeState was, @Nullable RecipeState is, Causes causes) {
    if (was != null && is != null) {
      return changed(was, is, causes);
    }
    return is != null
        ? Optional.of(alone(is, How.ADDED))
        : Optional.ofNullable(was).map(gone -> alone(gone, How.REMOVED));
  }

  private static RecipeChange alone(RecipeState state, How how) {
    OptionalDouble cost = cost(state);
    OptionalDouble none = OptionalDouble.empty();
    boolean added = how == How.ADDED;
    return new RecipeChange(
        state.code(),
        Optional.empty(),
        how,
        List.of(),
        List.of(),
        added ? none : cost,
        added ? cost : none,
        added ? state.figures().map(one -> one.account().tally()) : Optional.empty(),
        added ? state.figures().map(Effect::ofNew) : Optional.empty(),
        added ? state.obstacle() : "");
  }

  private static Optional<RecipeChange> changed(RecipeState was, RecipeState is, Causes causes) {
    boolean renamed = !was.code().equals(is.code());
    Optional<Effect> effect =
        was.figures()
            .flatMap(before -> is.figures().map(after -> Effect.between(before, after)))
            .filter(one -> !one.isNone());
    List<String> text = Wording.changed(was, is);
    boolean moves = effect.isPresent() || was.figures().isPresent() != is.figures().isPresent();
    if (!moves && text.isEmpty() && !renamed) {
      return Optional.empty();
    }
    return Optional.of(
        new RecipeChange(
            is.code(),
            renamed ? Optional.of(was.code()) : Optional.empty(),
            how(was, is, renamed, !text.isEmpty()),
            text,
            moves ? causes.of(was, is) : List.of(),
            cost(was),
            cost(is),
            is.figures().map(one -> one.account().tally()),
            effect,
            is.obstacle()));
  }

  private static How how(RecipeState was, RecipeState is, boolean renamed, boolean edited) {
    if (was.figures().isPresent() != is.figures().isPresent()) {
      return was.figures().isPresent() ? How.BROKEN : How.MENDED;
    }
    return edited ? How.EDITED : renamed ? How.RENAMED : How.BY_DATA;
  }

  private static OptionalDouble cost(RecipeState state) {
    return state.figures().stream().mapToDouble(one -> one.account().costPerKg()).findFirst();
  }
}
