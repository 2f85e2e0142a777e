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

  /** The shares that are best. */
  final class Found implements Answer {
    private final Task task;
    private final ComputedFeed feed;
    private final double[] shares;
    private final LinearProgram program;
    private final List<Requirement> rows;
    private final Optimum optimum;
    private final int rounds;

    public Found(
        Task task,
        ComputedFeed feed,
        double[] shares,
        LinearProgram program,
        List<Requirement> rows,
        Optimum optimum,
        int rounds) {
      this.task = task;
      this.feed = feed;
      this.shares = shares;
      this.program = program;
      this.rows = List.copyOf(rows);
      this.optimum = optimum;
      this.rounds = rounds;
    }

    /** What was asked. */
    public Task task() {
      return task;
    }

    /** The feed with them. */
    public ComputedFeed feed() {
      return feed;
    }

    /** Those of the free lines, in their order, in points; nobody writes to them. */
    public double[] shares() {
      return shares;
    }

    /** As it was solved last. */
    public LinearProgram program() {
      return program;
    }

    /** What each of its first constraints stands for. */
    public List<Requirement> rows() {
      return rows;
    }

    /** What came of it. */
    public Optimum optimum() {
      return optimum;
    }

    /** How often it was solved. */
    public int rounds() {
      return rounds;
    }

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
