package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import java.util.List;
import java.util.function.Function;

/** What came of a task. */
public sealed interface Answer {
  <R> R byKind(
      Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided);

  /**
   * The shares that are best.
   *
   * @param feed with them
   * @param shares of the free lines, in their order, in points
   * @param program as it was solved last
   * @param rows what each of its first constraints stands for
   * @param rounds how often it was solved
   */
  record Found(
      Task task,
      ComputedFeed feed,
      double[] shares,
      LinearProgram program,
      List<Requirement> rows,
      Optimum optimum,
      int rounds)
      implements Answer {
    @Override
    public <R> R byKind(
        Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided) {
      return found.apply(this);
    }
  }

  /** No shares keep all. */
  record Unmet(Task task, LinearProgram program, List<Requirement> rows) implements Answer {
    @Override
    public <R> R byKind(
        Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided) {
      return unmet.apply(this);
    }
  }

  /** Nothing that could be proven, and why. */
  record Undecided(Task task, String why) implements Answer {
    @Override
    public <R> R byKind(
        Function<Found, R> found, Function<Unmet, R> unmet, Function<Undecided, R> undecided) {
      return undecided.apply(this);
    }
  }
}
