package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.Outcome;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.JointTask.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the shares of several feeds that cost least together: frames them around what they are,
 * solves, computes all feeds of the answer, frames them around these, until the cost of all stays
 * and everything is kept by the feeds themselves.
 */
public final class JointOptimiser {
  private static final int ROUNDS = 40;

  /** What a round may still move, as a part of the cost or of the size of what is kept. */
  private static final double STILL = 1e-9;

  /** What it may where planes lie too close to each other to be told apart. */
  private static final double NEARLY = 1e-7;

  private final Solver solver;

  public JointOptimiser(Solver solver) {
    this.solver = solver;
  }

  /** From the shares as they are written. */
  public JointAnswer solve(JointTask task) {
    List<double[]> shares = new ArrayList<>();
    for (Made made : task.feeds()) {
      shares.add(written(made.task()));
    }
    return near(task, shares);
  }

  /** From shares that are near to those which are sought. */
  public JointAnswer near(JointTask task, List<double[]> start) {
    JointFraming framing = new JointFraming(task);
    List<double[]> shares = start;
    Optional<List<ComputedFeed>> feeds = feeds(task, shares);
    if (feeds.isEmpty()) {
      return noFigures();
    }
    JointFraming.Joint joint = framing.around(feeds.get(), shares);
    Optional<JointAnswer> last = Optional.empty();
    for (int round = 1; round <= ROUNDS; round++) {
      Outcome outcome = solver.solve(joint.program());
      if (outcome.optimum().isEmpty()) {
        JointAnswer none = without(task, outcome);
        return outcome.isInfeasible() ? none : last.orElse(none);
      }
      Optimum optimum = outcome.optimum().get();
      List<double[]> next = parted(task, joint, optimum);
      feeds = feeds(task, next);
      if (feeds.isEmpty()) {
        return noFigures();
      }
      JointFraming.Joint anew = framing.around(feeds.get(), next);
      double cost = anew.cost() + elsewhere(task, joint, optimum);
      JointAnswer found =
          new JointAnswer.Found(task, feeds.get(), next, joint, optimum, cost, round);
      if (isStill(joint, anew, STILL)) {
        return found;
      }
      last = isStill(joint, anew, NEARLY) ? Optional.of(found) : Optional.empty();
      shares = next;
      joint = anew;
    }
    return last.orElseGet(
        () ->
            new JointAnswer.Undecided(
                "the figures of the feeds did not settle in " + ROUNDS + " rounds of solving"));
  }

  private static JointAnswer noFigures() {
    return new JointAnswer.Undecided("the process has no figures for the shares it came to");
  }

  private static JointAnswer without(JointTask task, Outcome outcome) {
    return outcome.byKind(
        found -> new JointAnswer.Undecided("nothing"),
        none -> new JointAnswer.Unmet(task),
        endless -> new JointAnswer.Undecided("nothing bounds the shares"),
        failed -> new JointAnswer.Undecided(failed.why()));
  }

  private static double elsewhere(JointTask task, JointFraming.Joint joint, Optimum optimum) {
    int first = joint.offsets().get(joint.offsets().size() - 1);
    double money = 0;
    for (int s = 0; s < task.scarce().size(); s++) {
      double price = task.scarce().get(s).elsewhere();
      money += Double.isFinite(price) ? price * optimum.value(first + 2 * s + 1) : 0;
    }
    return money;
  }

  private static List<double[]> parted(JointTask task, JointFraming.Joint joint, Optimum optimum) {
    List<double[]> parted = new ArrayList<>();
    for (int f = 0; f < task.feeds().size(); f++) {
      double[] shares = new double[task.feeds().get(f).task().free().size()];
      for (int i = 0; i < shares.length; i++) {
        shares[i] = optimum.value(joint.offsets().get(f) + i);
      }
      parted.add(shares);
    }
    return parted;
  }

  private static Optional<List<ComputedFeed>> feeds(JointTask task, List<double[]> shares) {
    List<ComputedFeed> feeds = new ArrayList<>();
    for (int f = 0; f < shares.size(); f++) {
      Optional<ComputedFeed> feed = Optimiser.feed(task.feeds().get(f).task(), shares.get(f));
      if (feed.isEmpty()) {
        return Optional.empty();
      }
      feeds.add(feed.get());
    }
    return Optional.of(feeds);
  }

  private static double[] written(Task task) {
    double[] shares = new double[task.free().size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = task.free().get(i).written();
    }
    return shares;
  }

  private static boolean isStill(
      JointFraming.Joint solved, JointFraming.Joint around, double still) {
    double off = Math.abs(solved.cost() - around.cost());
    return around.missed() <= still && off <= still * Math.abs(around.cost());
  }
}
