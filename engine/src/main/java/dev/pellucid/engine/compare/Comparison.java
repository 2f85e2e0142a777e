package dev.pellucid.engine.compare;

import dev.pellucid.engine.compare.RecipeChange.Cause;
import dev.pellucid.engine.compare.RecipeChange.How;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Two states of a folder held against each other. A recipe of which neither words nor figures,
 * findings nor papers changed is left out, however its text was laid out.
 *
 * @param notices what must be known before the rest is believed
 * @param changes of recipes, the gravest first, then by what they do to the cost
 * @param premixes that changed, the gravest first
 * @param files other files of which the check says something else, the gravest first
 * @param errors that the check of the later state tells, those that were there before among them
 * @param causesNote what is to be known of the files that are named as causes; empty for nothing
 */
public record Comparison(
    List<String> notices,
    List<RecipeChange> changes,
    List<PremixChange> premixes,
    List<FileChange> files,
    long errors,
    String causesNote) {
  public Comparison {
    notices = List.copyOf(notices);
    changes = List.copyOf(changes);
    premixes = List.copyOf(premixes);
    files = List.copyOf(files);
  }

  /** Finds which files moved a recipe; asked by several threads at once. */
  public interface Causes {
    /** What is to be known of them all, in a sentence without its point; empty where nothing is. */
    String note();

    /** The files on which feeds may hang and that say something else. */
    Set<String> differing();

    /** The files without whose change it would be another; none where that is its own alone. */
    List<Cause> of(RecipeState before, RecipeState after);
  }

  /** Compares; a recipe that is gone is sought among the new ones under another code. */
  public static Comparison of(
      List<String> notices, Standing before, Standing after, Causes causes) {
    return new Comparison(
        notices,
        recipes(before.recipes(), after.recipes(), causes),
        premixes(before.premixes(), after.premixes(), causes),
        files(before.elsewhere(), after.elsewhere()),
        after.errors(),
        causes.note());
  }

  private static List<RecipeChange> recipes(
      Map<String, RecipeState> before, Map<String, RecipeState> after, Causes causes) {
    Map<String, String> formerly = Renames.between(before, after);
    Set<String> codes = new TreeSet<>(before.keySet());
    codes.addAll(after.keySet());
    codes.removeAll(formerly.values());
    return codes.parallelStream()
        .flatMap(
            code ->
                change(before.get(formerly.getOrDefault(code, code)), after.get(code), causes)
                    .stream())
        .sorted(
            Comparator.comparingInt(RecipeChange::rank)
                .thenComparing(change -> -Math.abs(change.costMoved()))
                .thenComparing(RecipeChange::code))
        .toList();
  }

  private static List<PremixChange> premixes(
      Map<String, PremixState> before, Map<String, PremixState> after, Causes causes) {
    Set<String> codes = new TreeSet<>(before.keySet());
    codes.addAll(after.keySet());
    List<PremixChange> changes = new ArrayList<>();
    for (String code : codes) {
      PremixState was = before.get(code);
      PremixState is = after.get(code);
      if (was != null && is != null) {
        PremixChange.between(was, is, causes.differing(), Wording.changed(was.words(), is.words()))
            .ifPresent(changes::add);
      } else if (is != null) {
        changes.add(PremixChange.alone(is, true));
      } else if (was != null) {
        changes.add(PremixChange.alone(was, false));
      }
    }
    changes.sort(Comparator.comparingInt(PremixChange::rank).thenComparing(PremixChange::code));
    return changes;
  }

  private static List<FileChange> files(
      Map<String, List<Found>> before, Map<String, List<Found>> after) {
    Set<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(after.keySet());
    List<FileChange> changes = new ArrayList<>();
    for (String path : paths) {
      FindingsMoved findings =
          FindingsMoved.between(
              before.getOrDefault(path, List.of()), after.getOrDefault(path, List.of()));
      if (!findings.isNone()) {
        changes.add(new FileChange(path, findings));
      }
    }
    changes.sort(
        Comparator.comparingInt((FileChange one) -> one.findings().rank())
            .thenComparing(FileChange::path));
    return changes;
  }

  /** How many findings of a severity are new, wherever they stand. */
  public int fresh(Severity severity) {
    int count = 0;
    for (RecipeChange one : changes) {
      count += one.findings().fresh(severity);
    }
    for (PremixChange one : premixes) {
      count += one.findings().fresh(severity);
    }
    for (FileChange one : files) {
      count += one.findings().fresh(severity);
    }
    return count;
  }

  /** How many are gone; those of a feed that cannot be computed any more are not among them. */
  public int gone(Severity severity) {
    int count = 0;
    for (RecipeChange one : changes) {
      count += one.isLost() ? 0 : one.findings().gone(severity);
    }
    for (PremixChange one : premixes) {
      count += one.findings().gone(severity);
    }
    for (FileChange one : files) {
      count += one.findings().gone(severity);
    }
    return count;
  }

  /** How many are not looked for any more, since their feed cannot be computed. */
  public int unsought(Severity severity) {
    int count = 0;
    for (RecipeChange one : changes) {
      count += one.isLost() ? one.findings().gone(severity) : 0;
    }
    return count;
  }

  /** Whether nothing changes that a comparison tells. */
  public boolean isNone() {
    return changes.isEmpty() && premixes.isEmpty() && files.isEmpty();
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
        added ? state.obstacle() : "",
        added
            ? FindingsMoved.between(List.of(), state.found())
            : FindingsMoved.between(state.found(), List.of()),
        Printed.Moved.NONE);
  }

  private static Optional<RecipeChange> changed(RecipeState was, RecipeState is, Causes causes) {
    boolean renamed = !was.code().equals(is.code());
    Optional<Effect> effect =
        was.figures()
            .flatMap(before -> is.figures().map(after -> Effect.between(before, after)))
            .filter(one -> !one.isNone());
    List<String> text = Wording.changed(was, is);
    FindingsMoved findings = FindingsMoved.between(was.found(), is.found());
    Printed.Moved printed = Printed.between(was.printed(), is.printed());
    boolean moves =
        effect.isPresent()
            || was.figures().isPresent() != is.figures().isPresent()
            || !findings.isNone()
            || !printed.isNone();
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
            is.obstacle(),
            findings,
            printed));
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
