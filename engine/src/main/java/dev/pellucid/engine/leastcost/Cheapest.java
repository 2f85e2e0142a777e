package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.Rounding;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.weighing.Reweighed;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The edit that makes a recipe cheapest: its shares are found, rounded to figures that a person
 * writes, and proven. Where the proof finds something broken, it is asked to leave so much to
 * spare, and found again; where that does not help, the change is made half as large, and at last
 * the recipe stays as it is, if it keeps all.
 */
final class Cheapest {
  private static final int TRIES = 5;
  private static final int HALVINGS = 3;
  private static final double CLOSE = 1e-7;
  private static final double NEAR = 1e-4;

  /** In percent: lines below are weighed apart. */
  private static final double SMALL = 1;

  private final Solver solver;

  Cheapest(Solver solver) {
    this.solver = solver;
  }

  /** What came of it. */
  static final class Result {
    private final Answer answer;
    private final double[] written;
    private final List<TextEdit> edits;
    private final Optional<RuleContext> tried;
    private final Optional<String> against;

    Result(
        Answer answer,
        double[] written,
        List<TextEdit> edits,
        Optional<RuleContext> tried,
        Optional<String> against) {
      this.answer = answer;
      this.written = written;
      this.edits = edits;
      this.tried = tried;
      this.against = against;
    }

    /** Before rounding. */
    Answer answer() {
      return answer;
    }

    /**
     * The shares of the free lines as they would be written, in points; empty where there are none.
     */
    double[] written() {
      return written;
    }

    /** Of the text. */
    List<TextEdit> edits() {
      return edits;
    }

    /** The recipe with them. */
    Optional<RuleContext> tried() {
      return tried;
    }

    /** What stands against them; empty where they are proven. */
    Optional<String> against() {
      return against;
    }

    boolean isProven() {
      return against.isEmpty();
    }

    /** What a kg in the bags then costs; only of what is proven. */
    double cost() {
      return tried.flatMap(RuleContext::feed).orElseThrow().costPerKg();
    }
  }

  Result of(Posed posed) {
    return of(posed, posed.task());
  }

  /** The same of a task of the same recipe. */
  Result of(Posed posed, Task task) {
    return of(posed, new Optimiser(solver).solve(task));
  }

  /** The same of an answer that is at hand. */
  Result of(Posed posed, Answer answer) {
    return answer.byKind(
        found -> rounded(posed, found),
        unmet -> without(answer, "no shares keep all"),
        undecided -> without(answer, undecided.why()));
  }

  private static Result without(Answer answer, String why) {
    return new Result(answer, new double[0], List.of(), Optional.empty(), Optional.of(why));
  }

  private Result rounded(Posed posed, Answer.Found first) {
    Result whole = tightened(posed, first, first);
    Result result = whole;
    double points = risen(first);
    for (int i = 0; i < HALVINGS && !result.isProven(); i++) {
      points /= 2;
      Task task = first.task();
      Task nearer =
          new Task(
              task.feed(),
              task.free(),
              task.kept(),
              Math.min(points, task.mostMoved()),
              task.aim());
      Optional<Answer.Found> half = found(nearer);
      if (half.isPresent()) {
        result = tightened(posed, first, half.get());
      }
    }
    if (result.isProven()) {
      result = withoutRemains(posed, first, result);
    }
    if (result.isProven() && isNoDearer(posed, result)) {
      return result;
    }
    Result stays = asItIs(posed, first);
    return stays.isProven() ? stays : result.isProven() ? result : whole;
  }

  /**
   * A line of which little is left may cost more than it saves, since small lines are weighed apart
   * and get overage: where what is written costs more than the answer, they are tried at their low
   * bound too.
   */
  private Result withoutRemains(Posed posed, Answer.Found first, Result result) {
    Result best = result;
    if (result.cost() <= first.feed().costPerKg() * (1 + NEAR)) {
      return best;
    }
    Task task = first.task();
    for (int i = 0; i < result.written().length; i++) {
      Free one = task.free().get(i);
      boolean small = result.written()[i] > CLOSE && result.written()[i] < SMALL;
      if (small && one.written() >= SMALL && one.low() < result.written()[i] - CLOSE) {
        List<Free> lines = new ArrayList<>(task.free());
        lines.set(i, new Free(one.line(), one.low(), one.low(), false, 0));
        Optional<Answer.Found> other = found(task.with(lines));
        Result tried = other.isPresent() ? tightened(posed, first, other.get()) : best;
        best = tried.isProven() && tried.cost() < best.cost() ? tried : best;
      }
    }
    return best;
  }

  /** Where something is broken today, whatever it costs. */
  private static boolean isNoDearer(Posed posed, Result result) {
    return !Today.keepsAll(posed)
        || result.cost() <= posed.recipe().feed().orElseThrow().costPerKg();
  }

  private static double risen(Answer.Found found) {
    double points = 0;
    for (int i = 0; i < found.shares().length; i++) {
      points += Math.max(0, found.shares()[i] - found.task().free().get(i).written());
    }
    return points;
  }

  private Optional<Answer.Found> found(Task task) {
    return new Optimiser(solver)
        .solve(task)
        .byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
  }

  private Result asItIs(Posed posed, Answer.Found first) {
    if (!Today.keepsAll(posed)) {
      return without(first, "the recipe as it stands does not keep all");
    }
    double[] shares = new double[first.task().free().size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = first.task().free().get(i).written();
    }
    return new Result(first, shares, List.of(), Optional.of(posed.recipe()), Optional.empty());
  }

  private Result tightened(Posed posed, Answer.Found first, Answer.Found start) {
    int decimals = ShareEdits.decimals(first.task().free());
    ShareEdits edits = new ShareEdits(posed.recipe().recipe(), decimals);
    Optional<Reweighed> scales = posed.recipe().floor().reweighed(first.task().feed());
    Answer.Found found = start;
    Optional<Result> best = Optional.empty();
    String against = "its figures did not settle";
    for (int i = 0; i < TRIES; i++) {
      Optional<double[]> shares = new Rounding(solver, decimals, scales).of(found);
      if (shares.isEmpty()) {
        against = "no shares with " + decimals + " decimals near it keep all";
        break;
      }
      List<TextEdit> changed = edits.of(found.task().free(), shares.get());
      if (best.isPresent() && isSame(best.get().written(), shares.get())) {
        break;
      }
      Proving proving =
          new Proving(posed.recipe(), found.task().kept(), posed.wishes().keepLabel());
      Proving.Proof proof = proving.of(changed);
      Result result =
          new Result(
              first, shares.get(), withStatus(posed, changed), proof.tried(), proof.against());
      if (proof.tried().isEmpty()) {
        return best.orElse(result);
      }
      boolean better =
          proof.holds() && (best.isEmpty() || Costing.isLess(result.cost(), best.get().cost()));
      if (best.isPresent() && !better) {
        break;
      }
      if (better) {
        best = Optional.of(result);
      } else {
        against = proof.against().orElse(against);
        Optional<Task> tighter = proving.tighter(proof.tried().get()).map(found.task()::keeping);
        Optional<Answer.Found> again = i == 0 ? Optional.of(found) : tighter.flatMap(this::found);
        if (again.isEmpty()) {
          break;
        }
        found = again.get();
      }
      scales =
          scales(posed, proof.tried().get())
              .or(() -> posed.recipe().floor().reweighed(first.task().feed()));
    }
    return best.isPresent() ? best.get() : without(first, against);
  }

  /**
   * As the batch is planned with the shares that were tried: in such loads, with such dilutions.
   */
  private static Optional<Reweighed> scales(Posed posed, RuleContext tried) {
    return tried.recipe().lines().size() == posed.task().feed().recipe().lines().size()
        ? tried.floor().reweighed(tried.feed().orElseThrow())
        : Optional.empty();
  }

  private static boolean isSame(double[] one, double[] other) {
    for (int i = 0; i < one.length; i++) {
      if (Math.abs(one[i] - other[i]) > CLOSE) {
        return false;
      }
    }
    return true;
  }

  private static List<TextEdit> withStatus(Posed posed, List<TextEdit> changed) {
    List<TextEdit> all = new ArrayList<>(changed);
    if (!changed.isEmpty()) {
      StatusEdit.of(posed.recipe().recipe().source()).ifPresent(all::add);
    }
    return all;
  }
}
