package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.Rounding;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * The edit that makes a recipe cheapest: its shares are found, rounded to figures that a person
 * writes, and proven. Where rounding or the scales of the plant break something, it is asked to
 * leave so much to spare, and found again.
 */
final class Cheapest {
  private static final int TRIES = 8;

  private final Solver solver;

  Cheapest(Solver solver) {
    this.solver = solver;
  }

  /**
   * What came of it.
   *
   * @param answer before rounding
   * @param written the shares of the free lines as they would be written, in points; empty where
   *     there are none
   * @param edits of the text
   * @param tried the recipe with them
   * @param against what stands against them; empty where they are proven
   */
  record Result(
      Answer answer,
      double[] written,
      List<TextEdit> edits,
      Optional<RuleContext> tried,
      Optional<String> against) {
    boolean isProven() {
      return against.isEmpty();
    }
  }

  Result of(Posed posed) {
    return of(posed, posed.task());
  }

  /** The same of a task of the same recipe. */
  Result of(Posed posed, Task task) {
    Answer first = new Optimiser(solver).solve(task);
    return first.byKind(
        found -> rounded(posed, found),
        unmet -> without(first, "no shares keep all"),
        undecided -> without(first, undecided.why()));
  }

  private static Result without(Answer answer, String why) {
    return new Result(answer, new double[0], List.of(), Optional.empty(), Optional.of(why));
  }

  private Result rounded(Posed posed, Answer.Found first) {
    int decimals = ShareEdits.decimals(first.task().free());
    Rounding rounding = new Rounding(solver, decimals);
    ShareEdits edits = new ShareEdits(posed.recipe().recipe(), decimals);
    Answer.Found found = first;
    Optional<String> against = Optional.empty();
    for (int i = 0; i < TRIES; i++) {
      Optional<double[]> shares = rounding.of(found);
      if (shares.isEmpty()) {
        return without(first, "no shares with " + decimals + " decimals near it keep all");
      }
      List<TextEdit> changed = edits.of(found.task().free(), shares.get());
      Proving proving = new Proving(posed.recipe(), found.task().kept());
      Proving.Proof proof = proving.of(changed);
      if (proof.holds() || proof.tried().isEmpty()) {
        return new Result(first, shares.get(), changed, proof.tried(), proof.against());
      }
      against = proof.against();
      Answer next =
          new Optimiser(solver).solve(found.task().keeping(proving.tighter(proof.tried().get())));
      Optional<Answer.Found> again =
          next.byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
      if (again.isEmpty()) {
        break;
      }
      found = again.get();
    }
    return without(first, against.orElse("its figures did not settle"));
  }
}
