package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.SmallShares;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.engine.resolve.Ref;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The little that a folder keeps of each of its recipes: no tree, no feed, no figure.
 *
 * @param findings all that is said of the recipe, its records included
 * @param limits how many limits were judged
 * @param asked what it is and what it is held to; absent where it could not be resolved
 * @param checked whether it has figures, so that its limits could be judged
 * @param sound whether no error keeps it from being made
 * @param mendFirst names of the files to be fixed before, where they are not its own
 * @param records what its batch records take of lots and leave behind
 * @param takes kg of each premix that one batch takes; empty of a recipe that is not approved or
 *     must not be made
 * @param shares of premixes and pure substances, to be held against those of other recipes
 * @param fault what broke in this program, if anything did
 * @param consequences those of the findings that may have their cause elsewhere
 * @param premixes codes of those that were looked up for it
 * @param reads all that was looked up; of a recipe with such findings alone
 */
public record Summary(
    String path,
    List<Finding> findings,
    int limits,
    Optional<Asked> asked,
    boolean checked,
    boolean sound,
    List<String> mendFirst,
    BatchRecordCheck.Looked records,
    Map<String, Double> takes,
    SmallShares shares,
    Optional<Throwable> fault,
    List<Consequence> consequences,
    Set<String> premixes,
    Reads reads) {
  public Summary {
    consequences = List.copyOf(consequences);
    premixes = Set.copyOf(premixes);
    takes = Collections.unmodifiableMap(new TreeMap<>(takes));
    findings = List.copyOf(findings);
    mendFirst = List.copyOf(mendFirst);
  }

  /** What is kept of a recipe. */
  public static Summary of(Checked recipe) {
    List<Finding> all = new ArrayList<>(recipe.findings());
    all.addAll(recipe.records().findings());
    List<Consequence> consequences =
        recipe.recipe().isPresent()
            ? Consequence.of(recipe.recipe().get(), recipe.remarks())
            : List.of();
    return new Summary(
        recipe.path(),
        all,
        recipe.recipe().map(one -> one.limits().size()).orElse(0),
        recipe.recipe().map(Asked::of),
        recipe.feed().isPresent(),
        recipe.isSound(),
        recipe.mendFirst(),
        recipe.records(),
        PremixBatches.takes(recipe),
        shares(recipe),
        recipe.fault(),
        consequences,
        recipe.reads().names(Ref.Kind.PREMIX),
        consequences.isEmpty() ? Reads.NONE : recipe.reads());
  }

  private static SmallShares shares(Checked recipe) {
    return recipe.recipe().isPresent()
        ? SmallShares.of(recipe.recipe().get().recipe())
        : SmallShares.NONE;
  }

  /** Whether it can be read, and is not approved to be made. */
  public boolean isDraft() {
    return asked.isPresent() && !asked.get().approved();
  }

  public String code() {
    return Trees.stem(path);
  }
}
