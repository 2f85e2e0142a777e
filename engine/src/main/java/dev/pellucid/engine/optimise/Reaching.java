package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Variable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far one figure goes while a task keeps all else, whatever it costs. A figure is one sum over
 * another: what is left to a bound is made as large as it gets, the feed that comes of it has
 * another figure, that is the next bound, until it stays.
 */
public final class Reaching {
  private static final int ROUNDS = 40;
  private static final double STILL = 1e-9;

  private final Task task;
  private final Solver solver;

  /**
   * @param task without what is asked of the figure
   */
  public Reaching(Task task, Solver solver) {
    this.task = task.aiming(Aim.CHANGE);
    this.solver = solver;
  }

  /** What is looked at. */
  private interface Sight {
    double figure(Slopes feed, double[] shares);

    /** What is left to a bound on it, of which the least is to be as large as it gets. */
    List<Slope> rooms(Slopes feed, double[] shares, double bound);
  }

  /**
   * The bound of what is asked that is nearest to it and can be met, in the base of its kind; empty
   * where nothing keeps all else.
   */
  public OptionalDouble nearest(Requirement asked) {
    return last(
        new Sight() {
          @Override
          public double figure(Slopes feed, double[] shares) {
            return OtherBound.kept(asked, feed);
          }

          @Override
          public List<Slope> rooms(Slopes feed, double[] shares, double bound) {
            return OtherBound.of(asked, bound).orElseThrow().rooms(feed);
          }
        });
  }

  /** The same figure at its other end. */
  public OptionalDouble farthest(Requirement asked) {
    return last(
        new Sight() {
          @Override
          public double figure(Slopes feed, double[] shares) {
            return OtherBound.kept(asked, feed);
          }

          @Override
          public List<Slope> rooms(Slopes feed, double[] shares, double bound) {
            return List.of(OtherBound.of(asked, bound).orElseThrow().rooms(feed).get(0).negated());
          }
        });
  }

  /** The least share of a free line, in points. */
  public OptionalDouble least(int line) {
    return share(line, -1);
  }

  /** The most of it. */
  public OptionalDouble most(int line) {
    return share(line, 1);
  }

  private OptionalDouble share(int line, int sign) {
    return last(
        new Sight() {
          @Override
          public double figure(Slopes feed, double[] shares) {
            return shares[line];
          }

          @Override
          public List<Slope> rooms(Slopes feed, double[] shares, double bound) {
            double[] perPoint = new double[task.feed().recipe().lines().size()];
            perPoint[task.free().get(line).line().index()] = sign;
            return List.of(new Slope(sign * (shares[line] - bound), perPoint));
          }
        });
  }

  private OptionalDouble last(Sight sight) {
    Answer answer = new Optimiser(solver).solve(task);
    return answer.byKind(
        found -> last(sight, found),
        none -> OptionalDouble.empty(),
        undecided -> OptionalDouble.empty());
  }

  private OptionalDouble last(Sight sight, Answer.Found start) {
    Framing framing = new Framing(task);
    ComputedFeed feed = start.feed();
    double[] shares = start.shares();
    Framed framed = framing.around(feed, shares);
    OptionalDouble reached = OptionalDouble.empty();
    double figure = sight.figure(new Slopes(feed), shares);
    // A ratio over nothing is without end, and no bound is near it.
    for (int round = 0; round < ROUNDS && Double.isFinite(figure); round++) {
      List<Slope> rooms = sight.rooms(new Slopes(feed), shares, figure);
      Optional<Optimum> optimum = solver.solve(widest(framed.program(), rooms, shares)).optimum();
      if (optimum.isEmpty()) {
        return reached;
      }
      double[] next = new double[shares.length];
      System.arraycopy(optimum.get().values(), 0, next, 0, next.length);
      Optional<ComputedFeed> made = Optimiser.feed(task, next);
      if (made.isEmpty()) {
        return reached;
      }
      feed = made.get();
      shares = next;
      framed = framing.around(feed, shares);
      double then = sight.figure(new Slopes(feed), shares);
      boolean still = Math.abs(then - figure) <= STILL * Math.max(Math.abs(then), STILL);
      figure = then;
      if (framed.holds()) {
        reached = OptionalDouble.of(figure);
        if (still) {
          return reached;
        }
      }
    }
    return reached;
  }

  /** The least of some rooms as large as it gets: it is one more variable, no more than any. */
  private LinearProgram widest(LinearProgram program, List<Slope> rooms, double[] shares) {
    int size = program.variables().size();
    List<Variable> variables = new ArrayList<>();
    for (Variable one : program.variables()) {
      variables.add(one.at(0));
    }
    variables.add(Variable.of(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, -1));
    List<Constraint> constraints = new ArrayList<>();
    for (Constraint one : program.constraints()) {
      double[] row = new double[size + 1];
      System.arraycopy(one.coefficients(), 0, row, 0, size);
      constraints.add(Constraint.of(row, one.low(), one.high()));
    }
    for (Slope room : rooms) {
      double[] row = new double[size + 1];
      double there = 0;
      for (int i = 0; i < shares.length; i++) {
        row[i] = room.perPoint()[task.free().get(i).line().index()];
        there += row[i] * shares[i];
      }
      row[size] = -1;
      constraints.add(Constraint.of(row, there - room.now(), Double.POSITIVE_INFINITY));
    }
    return new LinearProgram(variables, constraints);
  }
}
