package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far the costs of a program may move in one direction while the values that are optimal stay
 * so: from {@code cost + from * direction} to {@code cost + to * direction}. The values stay as
 * long as there are prices, of the bounds at which they stand, that prove them; so this is exact
 * where more bounds bind than need to, too. Where whole multiples or nothing at all were chosen, it
 * holds of the program with these choices made.
 *
 * @param from zero or below, or infinite
 * @param to zero or above, or infinite
 */
public record Stays(double from, double to) {
  /** How near to a bound a sum stands at it, as a part of its terms. */
  private static final double NEAR = 1e-9;

  /** Empty where the solver fails. */
  public static Optional<Stays> along(
      LinearProgram program, Optimum optimum, double[] direction, Solver solver) {
    double[] values = optimum.values();
    LinearProgram prices = prices(program.withChoices(values), values, direction);
    double[] figure = new double[prices.variables().size()];
    figure[0] = 1;
    return Reach.of(prices, figure, solver)
        .map(reach -> new Stays(Math.min(reach.least(), 0), Math.max(reach.most(), 0)));
  }

  /** By the solver of this room. */
  public static Optional<Stays> along(LinearProgram program, Optimum optimum, double[] direction) {
    return along(program, optimum, direction, Solver.standard());
  }

  /**
   * All pairs of a distance and prices that prove the values: the distance is the first variable, a
   * price of each bound at which a constraint stands are the others, and a constraint for each
   * variable says that its reduced cost does not pull it off its bound.
   */
  private static LinearProgram prices(LinearProgram program, double[] values, double[] direction) {
    List<Variable> variables = new ArrayList<>();
    variables.add(Variable.of(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0));
    List<Constraint> standing = new ArrayList<>();
    for (Constraint constraint : program.constraints()) {
      double sum = constraint.at(values);
      double near = NEAR * size(constraint, values);
      boolean atLow = sum <= constraint.low() + near;
      boolean atHigh = sum >= constraint.high() - near;
      if (atLow || atHigh) {
        variables.add(
            Variable.of(
                atHigh ? Double.NEGATIVE_INFINITY : 0, atLow ? Double.POSITIVE_INFINITY : 0, 0));
        standing.add(constraint);
      }
    }
    List<Constraint> constraints = new ArrayList<>();
    for (int j = 0; j < values.length; j++) {
      double[] row = new double[variables.size()];
      row[0] = -direction[j];
      for (int k = 0; k < standing.size(); k++) {
        row[k + 1] = standing.get(k).coefficient(j);
      }
      Variable variable = program.variables().get(j);
      double near = NEAR * Math.abs(values[j]);
      boolean atLow = values[j] <= variable.low() + near;
      boolean atHigh = values[j] >= variable.high() - near;
      constraints.add(
          Constraint.of(
              row,
              atLow ? Double.NEGATIVE_INFINITY : variable.cost(),
              atHigh ? Double.POSITIVE_INFINITY : variable.cost()));
    }
    return new LinearProgram(variables, constraints);
  }

  private static double size(Constraint constraint, double[] values) {
    double size = 0;
    for (int j = 0; j < values.length; j++) {
      size += Math.abs(constraint.coefficient(j) * values[j]);
    }
    return size;
  }
}
