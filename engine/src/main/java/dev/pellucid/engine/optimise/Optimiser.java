package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.Outcome;
import dev.pellucid.engine.linear.Solver;
import java.util.Optional;

/**
 * Finds the shares of a task: frames it around the feed as it is, solves, computes the feed of the
 * answer, frames it around that, until the cost stays and everything is kept by the feed itself.
 */
public final class Optimiser {
  /** Each round at least halves what is missing; far fewer are ever needed. */
  private static final int ROUNDS = 40;

  /** What a round may still move, as a part of the cost or of the size of what is kept. */
  private static final double STILL = 1e-9;

  /**
   * What it may where planes lie so close to each other that a solver cannot tell them apart; what
   * is rounded and proven afterwards is asked for more room than that.
   */
  private static final double NEARLY = 1e-7;

  private final Solver solver;

  public Optimiser(Solver solver) {
    this.solver = solver;
  }

  public Answer solve(Task task) {
    return solve(task, written(task), task.feed());
  }

  /**
   * The same where shares are known that are near to those which are sought: fewer rounds are
   * needed from there.
   */
  public Answer near(Task task, double[] shares) {
    Optional<ComputedFeed> feed = feed(task, shares);
    return feed.isPresent() ? solve(task, shares, feed.get()) : solve(task);
  }

  private Answer solve(Task task, double[] start, ComputedFeed around) {
    if (task.free().isEmpty()) {
      return new Answer.Undecided(task, "no line is free to change");
    }
    Framing framing = new Framing(task);
    double[] shares = start;
    ComputedFeed feed = around;
    Framed framed = framing.around(feed, shares);
    Optional<Answer> last = Optional.empty();
    for (int round = 1; round <= ROUNDS; round++) {
      Outcome outcome = solver.solve(framed.program());
      Optional<Optimum> optimum = outcome.optimum();
      if (optimum.isEmpty() && isFailed(outcome)) {
        framed = Reachable.of(framed, shares.length);
        outcome = solver.solve(framed.program());
        optimum = outcome.optimum();
      }
      if (optimum.isEmpty()) {
        Answer none = without(task, framed, outcome);
        Optional<Answer> nearly = last;
        return none.byKind(found -> none, unmet -> none, undecided -> nearly.orElse(none));
      }
      double[] next = first(optimum.get().values(), shares.length);
      Optional<ComputedFeed> made = feed(task, next);
      if (made.isEmpty()) {
        return new Answer.Undecided(task, "the process has no figures for the shares it came to");
      }
      Framed anew = framing.around(made.get(), next);
      Answer found =
          new Answer.Found(
              task, made.get(), next, framed.program(), framed.rows(), optimum.get(), round);
      if (isStill(task, framed, anew, STILL)) {
        return found;
      }
      last = isStill(task, framed, anew, NEARLY) ? Optional.of(found) : Optional.empty();
      feed = made.get();
      shares = next;
      framed = anew;
    }
    return last.orElse(
        new Answer.Undecided(
            task, "its figures did not settle in " + ROUNDS + " rounds of solving"));
  }

  private static boolean isFailed(Outcome outcome) {
    return outcome.byKind(found -> false, none -> false, endless -> false, failed -> true);
  }

  private static Answer without(Task task, Framed framed, Outcome outcome) {
    return outcome.byKind(
        found -> new Answer.Undecided(task, "nothing"),
        none -> new Answer.Unmet(task, framed.program(), framed.rows()),
        endless -> new Answer.Undecided(task, "nothing bounds the shares"),
        failed -> new Answer.Undecided(task, failed.why()));
  }

  private static double[] written(Task task) {
    double[] shares = new double[task.free().size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = task.free().get(i).written();
    }
    return shares;
  }

  private static double[] first(double[] values, int count) {
    double[] first = new double[count];
    System.arraycopy(values, 0, first, 0, count);
    return first;
  }

  /** A feed with these shares of its free lines; empty where the process cannot make it. */
  public static Optional<ComputedFeed> feed(Task task, double[] shares) {
    double[] points = new double[task.feed().recipe().lines().size()];
    for (int i = 0; i < shares.length; i++) {
      Free one = task.free().get(i);
      // The last bits of an answer may lie below zero, and no share does.
      points[one.line().index()] = Math.max(0, shares[i]) - one.written();
    }
    return Weighing.moved(task.feed(), points).flatMap(it -> task.feed().weighed(it).feed());
  }

  private static boolean isStill(Task task, Framed solved, Framed around, double still) {
    double off = Math.abs(solved.costPerKg() - around.costPerKg());
    return around.missed() <= still
        && (task.aim() == Aim.CHANGE || off <= still * Math.abs(around.costPerKg()));
  }
}
