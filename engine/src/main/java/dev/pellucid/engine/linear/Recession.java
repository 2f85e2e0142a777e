package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.List;

/** Where a program can be left in one direction without end: no bound is ahead. */
final class Recession {
  private Recession() {}

  /**
   * The program of directions, each part of them between -1 and 1, whose least cost is below zero
   * where the cost of the program falls without end.
   */
  static LinearProgram of(LinearProgram program) {
    List<Variable> variables = new ArrayList<>();
    for (Variable variable : program.variables()) {
      variables.add(
          Variable.of(
              Double.isFinite(variable.low()) ? 0 : -1,
              Double.isFinite(variable.high()) ? 0 : 1,
              variable.cost()));
    }
    List<Constraint> constraints = new ArrayList<>();
    for (Constraint constraint : program.constraints()) {
      constraints.add(
          constraint.between(
              Double.isFinite(constraint.low()) ? 0 : Double.NEGATIVE_INFINITY,
              Double.isFinite(constraint.high()) ? 0 : Double.POSITIVE_INFINITY));
    }
    return new LinearProgram(variables, constraints);
  }
}
