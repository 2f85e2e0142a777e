package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.PriceStays;
import dev.pellucid.engine.linear.Side;
import dev.pellucid.engine.linear.Solver;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What came of a joint task. */
public sealed interface JointAnswer {
  <R> R byKind(
      Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided);

  /** The shares of all feeds that cost least together. */
  final class Found implements JointAnswer {
    private final JointTask task;
    private final List<ComputedFeed> feeds;
    private final List<double[]> shares;
    private final JointFraming.Joint joint;
    private final Optimum optimum;
    private final double cost;
    private final int rounds;

    /**
     * @param joint as it was solved last
     * @param cost money for all
     */
    Found(
        JointTask task,
        List<ComputedFeed> feeds,
        List<double[]> shares,
        JointFraming.Joint joint,
        Optimum optimum,
        double cost,
        int rounds) {
      this.task = task;
      this.feeds = List.copyOf(feeds);
      this.shares = List.copyOf(shares);
      this.joint = joint;
      this.optimum = optimum;
      this.cost = cost;
      this.rounds = rounds;
    }

    public JointTask task() {
      return task;
    }

    /** Each with its shares. */
    public List<ComputedFeed> feeds() {
      return feeds;
    }

    /** Of the free lines of each, in points; nobody writes to them. */
    public List<double[]> shares() {
      return shares;
    }

    /** Money for all, what is had elsewhere at a price of its own included. */
    public double cost() {
      return cost;
    }

    /** How often it was solved. */
    public int rounds() {
      return rounds;
    }

    /** The kg that a feed takes of something in all. */
    public double taken(int feed, String ingredient) {
      Slopes slopes = new Slopes(feeds.get(feed));
      return task.feeds().get(feed).all(slopes, slopes.taken(ingredient)).now();
    }

    /** By how much all costs less with a kg more of what is short; never below zero. */
    public double worth(int scarce) {
      return Math.max(0, -optimum.price(joint.firstScarce() + scarce));
    }

    /** The kg that are had elsewhere. */
    public double elsewhere(int scarce) {
      int first = joint.offsets().get(joint.offsets().size() - 1);
      return optimum.value(first + 2 * scarce + 1);
    }

    /** Between which amounts of it a kg more is worth the same, as the program has it. */
    public Optional<PriceStays> stays(int scarce, Solver solver) {
      return PriceStays.of(joint.program(), solver, joint.firstScarce() + scarce, Side.HIGH);
    }

    /** The last program, which another solver can be given too. */
    public LinearProgram program() {
      return joint.program();
    }

    @Override
    public <R> R byKind(
        Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided) {
      return found.apply(this);
    }
  }

  /** No shares keep all. */
  record Unmet(JointTask task) implements JointAnswer {
    @Override
    public <R> R byKind(
        Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided) {
      return unmet.apply(this);
    }
  }

  /** Nothing that could be proven, and why. */
  record Undecided(String why) implements JointAnswer {
    @Override
    public <R> R byKind(
        Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided) {
      return undecided.apply(this);
    }
  }
}
