package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Variable;
import java.util.ArrayList;
import java.util.List;

/**
 * A program without the constraints that nothing within the bounds of its lines can break, their
 * total kept: those are most, and a solver that fails at all of them may not at the others.
 */
final class Reachable {
  private Reachable() {}

  /**
   * @param lines how many of the first variables are lines
   */
  static Framed of(Framed framed, int lines) {
    LinearProgram program = framed.program();
    List<Constraint> constraints = new ArrayList<>();
    List<Requirement> rows = new ArrayList<>();
    int count = framed.rows().size();
    double total = program.constraints().get(count).low();
    for (int i = 0; i < program.constraints().size(); i++) {
      Constraint one = program.constraints().get(i);
      if (i >= count) {
        constraints.add(one);
      } else if (framed.rows().get(i).bends() || least(program, one, lines, total) < one.low()) {
        constraints.add(one);
        rows.add(framed.rows().get(i));
      }
    }
    return new Framed(
        new LinearProgram(program.variables(), constraints),
        rows,
        framed.costPerKg(),
        framed.missed(),
        framed.bagged());
  }

  /** The least that a sum can be: each line at its low, and what is left where it counts least. */
  private static double least(LinearProgram program, Constraint one, int lines, double total) {
    double least = 0;
    double left = total;
    double[] room = new double[lines];
    for (int j = 0; j < lines; j++) {
      Variable line = program.variables().get(j);
      double low = line.orZero() ? Math.min(0, line.low()) : line.low();
      least += one.coefficient(j) * low;
      left -= low;
      room[j] = line.high() - low;
    }
    while (left > 0) {
      int next = -1;
      for (int j = 0; j < lines; j++) {
        boolean lower = next < 0 || one.coefficient(j) < one.coefficient(next);
        next = room[j] > 0 && lower ? j : next;
      }
      if (next < 0) {
        return least;
      }
      double taken = Math.min(left, room[next]);
      least += one.coefficient(next) * taken;
      left -= taken;
      room[next] = 0;
    }
    return least;
  }
}
