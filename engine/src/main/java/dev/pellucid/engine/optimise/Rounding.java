package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Variable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The shares of an answer as a person writes them: each a whole number of steps from where it
 * stands, all together what they were. One line after the other takes the step below or above its
 * share, whichever costs less, and the program is solved again for the others; so what one line
 * loses the others make up, and every bound is kept. Then steps go from line to line while that
 * costs less.
 */
public final class Rounding {
  /** How far from a bound a sum may lie beyond it and still keep it, as a part of its size. */
  private static final double CLOSE = 1e-10;

  private static final double LEAST = 1e-9;

  private final Solver solver;
  private final double step;

  /**
   * @param decimals of the shares, in percent
   */
  public Rounding(Solver solver, int decimals) {
    this.solver = solver;
    this.step = Math.pow(10, -decimals);
  }

  /** In the order of the free lines, in points; empty where nothing near keeps all. */
  public Optional<double[]> of(Answer.Found found) {
    List<Free> free = found.task().free();
    LinearProgram program = chosen(found);
    double[] shares = found.shares().clone();
    for (int i : order(found)) {
      Optional<Fixed> fixed = fixed(program, i, free.get(i), shares[i]);
      if (fixed.isEmpty()) {
        return Optional.empty();
      }
      program = fixed.get().program();
      System.arraycopy(fixed.get().optimum().values(), 0, shares, 0, shares.length);
      shares[i] = fixed.get().share();
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] = near(free.get(i), Math.rint(steps(free.get(i), shares[i])));
    }
    cheaper(found, shares);
    return Optional.of(shares);
  }

  private record Fixed(LinearProgram program, Optimum optimum, double share) {}

  /** The rest is not written, so it comes last and takes what the others leave. */
  private static List<Integer> order(Answer.Found found) {
    List<Integer> order = new ArrayList<>();
    int last = -1;
    for (int i = 0; i < found.shares().length; i++) {
      if (found.task().free().get(i).line().rest()) {
        last = i;
      } else {
        order.add(i);
      }
    }
    if (last >= 0) {
      order.add(last);
    }
    return order;
  }

  /** With the choices made that the answer has made: what is left out stays out. */
  private static LinearProgram chosen(Answer.Found found) {
    LinearProgram program = found.program();
    for (int i = 0; i < found.shares().length; i++) {
      Variable one = program.variables().get(i);
      double share = found.shares()[i];
      if (one.orZero() && share < LEAST) {
        program = program.withVariable(i, Variable.of(0, 0, one.cost()));
      } else if (one.step() > 0) {
        program = program.withVariable(i, Variable.of(share, share, one.cost()));
      } else {
        program = program.withVariable(i, Variable.of(one.low(), one.high(), one.cost()));
      }
    }
    return program;
  }

  private double steps(Free line, double share) {
    return (share - line.written()) / step;
  }

  private double near(Free line, double steps) {
    return line.written() + steps * step;
  }

  private Optional<Fixed> fixed(LinearProgram program, int i, Free line, double share) {
    double steps = steps(line, share);
    if (Math.abs(steps - Math.rint(steps)) < 1e-7) {
      return at(program, i, near(line, Math.rint(steps)));
    }
    Optional<Fixed> below = at(program, i, near(line, Math.floor(steps)));
    Optional<Fixed> above = at(program, i, near(line, Math.ceil(steps)));
    if (below.isEmpty() || above.isEmpty()) {
      return below.isPresent() ? below : above;
    }
    return below.get().optimum().cost() <= above.get().optimum().cost() ? below : above;
  }

  private Optional<Fixed> at(LinearProgram program, int i, double share) {
    Variable one = program.variables().get(i);
    if (share < one.low() - LEAST || share > one.high() + LEAST) {
      return Optional.empty();
    }
    LinearProgram with = program.withVariable(i, Variable.of(share, share, one.cost()));
    return solver.solve(with).optimum().map(optimum -> new Fixed(with, optimum, share));
  }

  /** Moves single steps from one line to another while that costs less and keeps all. */
  private void cheaper(Answer.Found found, double[] shares) {
    LinearProgram program = found.program();
    boolean moved = true;
    for (int round = 0; moved && round < shares.length; round++) {
      moved = false;
      for (int up = 0; up < shares.length; up++) {
        for (int down = 0; down < shares.length; down++) {
          moved |= up != down && cheaper(program, shares, up, down);
        }
      }
    }
  }

  private boolean cheaper(LinearProgram program, double[] shares, int up, int down) {
    Variable to = program.variables().get(up);
    Variable from = program.variables().get(down);
    boolean any = to.step() == 0 && from.step() == 0 && shares[up] > 0 && shares[down] > 0;
    if (!any || to.cost() >= from.cost()) {
      return false;
    }
    shares[up] += step;
    shares[down] -= step;
    if (shares[up] <= to.high() + LEAST
        && shares[down] >= from.low() - LEAST
        && keeps(program, shares)) {
      return true;
    }
    shares[up] -= step;
    shares[down] += step;
    return false;
  }

  /** Of what hangs on shares alone; where moves are counted, single steps are not looked for. */
  private static boolean keeps(LinearProgram program, double[] shares) {
    if (program.variables().size() != shares.length) {
      return false;
    }
    for (Constraint one : program.constraints()) {
      double sum = 0;
      double size = 0;
      for (int i = 0; i < shares.length; i++) {
        double part = one.coefficient(i) * shares[i];
        sum += part;
        size += Math.abs(part);
      }
      if (sum < one.low() - CLOSE * size || sum > one.high() + CLOSE * size) {
        return false;
      }
    }
    return true;
  }
}
