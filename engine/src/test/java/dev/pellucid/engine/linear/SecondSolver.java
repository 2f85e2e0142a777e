package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/** Another library, which shares nothing with the first. It is given rows of the size of one. */
public final class SecondSolver {
  private static final double CLOSE = 1e-9;
  private static final int ULPS = 10;
  private static final double LEAST_PIVOT = 1e-11;

  private SecondSolver() {}

  /**
   * The least cost: negative infinity where it has no end, empty where nothing keeps all bounds.
   */
  public static OptionalDouble least(LinearProgram program) {
    int size = program.variables().size();
    List<LinearConstraint> rows = new ArrayList<>();
    double[] costs = new double[size];
    boolean isPositive = true;
    for (int j = 0; j < size; j++) {
      Variable variable = program.variables().get(j);
      double[] one = new double[size];
      one[j] = 1;
      costs[j] = variable.cost();
      isPositive &= variable.low() >= 0;
      add(rows, one, variable.low(), variable.high());
    }
    for (Constraint constraint : program.constraints()) {
      add(rows, constraint.coefficients(), constraint.low(), constraint.high());
    }
    try {
      double[] point =
          new SimplexSolver(CLOSE, ULPS, LEAST_PIVOT)
              .optimize(
                  new LinearObjectiveFunction(costs, 0),
                  new LinearConstraintSet(rows),
                  GoalType.MINIMIZE,
                  new NonNegativeConstraint(isPositive),
                  PivotSelectionRule.BLAND)
              .getPoint();
      return OptionalDouble.of(program.cost(point));
    } catch (MathIllegalStateException none) {
      if (none.getSpecifier() == LocalizedOptimFormats.UNBOUNDED_SOLUTION) {
        return OptionalDouble.of(Double.NEGATIVE_INFINITY);
      }
      if (none.getSpecifier() == LocalizedOptimFormats.NO_FEASIBLE_SOLUTION) {
        return OptionalDouble.empty();
      }
      throw none;
    }
  }

  private static void add(List<LinearConstraint> rows, double[] row, double low, double high) {
    double greatest = 0;
    for (double coefficient : row) {
      greatest = Math.max(greatest, Math.abs(coefficient));
    }
    double size = greatest == 0 ? 1 : greatest;
    double[] level = new double[row.length];
    for (int j = 0; j < row.length; j++) {
      level[j] = row[j] / size;
    }
    if (Double.isFinite(low)) {
      rows.add(new LinearConstraint(level, Relationship.GEQ, low / size));
    }
    if (Double.isFinite(high)) {
      rows.add(new LinearConstraint(level, Relationship.LEQ, high / size));
    }
  }
}
