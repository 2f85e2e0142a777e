package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.resolve.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The smallest change of shares that meets a broken limit: one line against the {@code rest}, else
 * two lines against it or each other.
 *
 * <p>It stays within the bounds of its lines. Before it is offered, the recipe is read, computed
 * and judged again with it ({@link Proof}): it must meet the limit, break none that was kept, make
 * no other that is broken worse, and bring no error or warning that was not there. So no two of one
 * feed contradict each other.
 */
final class Fix {
  /** Where more limits are broken, one cause moves them all, and pairs are not looked for. */
  static final int FEW = 8;

  private Fix() {}

  /**
   * Empty where no such change meets it.
   *
   * @param broken of a limit of the recipe, or of any other that the feed is to meet
   */
  static Optional<Change> smallest(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    if (recipe.fixing().again() == Again.NONE || !recipe.feed().equals(Optional.of(feed))) {
      return Optional.empty();
    }
    return found(recipe, List.of(broken.limit()), broken(recipe).size() <= FEW);
  }

  /** One change of shares that meets every limit that is broken. */
  static Optional<Fixing.Cure> together(RuleContext recipe) {
    List<Limit> all = broken(recipe);
    Optional<Change> change =
        all.isEmpty() ? Optional.empty() : found(recipe, all, all.size() <= FEW);
    return change.flatMap(
        it ->
            recipe
                .fixing()
                .again()
                .with(it.edits())
                .map(tried -> new Fixing.Cure(it.words(), tried)));
  }

  private static Optional<Change> found(RuleContext recipe, List<Limit> targets, boolean pairs) {
    Search search =
        new Search(
            recipe.fixing().moves(recipe),
            targets,
            recipe.limits(),
            change -> proven(recipe, targets, change));
    Optional<Change> one = search.ofOneLine();
    return one.isPresent() || !pairs ? one : search.ofTwoLines();
  }

  private static Optional<Change> proven(RuleContext recipe, List<Limit> targets, Change change) {
    Proof proof = new Proof(recipe, targets);
    Optional<RuleContext> tried = recipe.fixing().again().with(change.edits());
    return proof.holds(tried)
        ? Optional.of(change.relabelled(proof.relabels(tried.orElseThrow())))
        : Optional.empty();
  }

  /** The limits that a recipe breaks. */
  static List<Limit> broken(RuleContext recipe) {
    List<Limit> broken = new ArrayList<>();
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isBroken()) {
        broken.add(status.limit());
      }
    }
    return broken;
  }
}
