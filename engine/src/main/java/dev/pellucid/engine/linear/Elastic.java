package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A program in which each bound of a constraint may be missed, at a cost for what it is missed by:
 * it can always be met, and its least cost is zero where the program can be. The prices of its
 * optimum show why a program cannot be met. Its variables are those of the program, without cost,
 * and then one for each bound that may be missed.
 */
final class Elastic {
  private Elastic() {}

  static LinearProgram of(LinearProgram program) {
    int plain = program.variables().size();
    List<Variable> variables = new ArrayList<>();
    for (Variable variable : program.variables()) {
      variables.add(Variable.of(variable.low(), variable.high(), 0));
    }
    for (Constraint constraint : program.constraints()) {
      int bounds = bounds(constraint);
      variables.addAll(Collections.nCopies(bounds, Variable.of(0, Double.POSITIVE_INFINITY, 1)));
    }
    List<Constraint> constraints = new ArrayList<>();
    int next = plain;
    for (Constraint constraint : program.constraints()) {
      double[] row = new double[variables.size()];
      double size = 0;
      for (int j = 0; j < plain; j++) {
        row[j] = constraint.coefficient(j);
        size = Math.max(size, Math.abs(row[j]));
      }
      size = size == 0 ? 1 : size;
      if (Double.isFinite(constraint.low())) {
        row[next++] = size;
      }
      if (Double.isFinite(constraint.high())) {
        row[next++] = -size;
      }
      constraints.add(Constraint.of(row, constraint.low(), constraint.high()));
    }
    return new LinearProgram(variables, constraints);
  }

  private static int bounds(Constraint constraint) {
    return (Double.isFinite(constraint.low()) ? 1 : 0)
        + (Double.isFinite(constraint.high()) ? 1 : 0);
  }
}
