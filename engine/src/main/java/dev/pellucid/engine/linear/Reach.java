package dev.pellucid.engine.linear;

import java.util.Optional;

/**
 * What a linear figure reaches within a program, whatever it costs.
 *
 * @param least infinite where there is no least
 * @param most infinite where there is no most
 */
public record Reach(double least, double most) {
  /**
   * Empty where nothing keeps all bounds, or the solver fails.
   *
   * @param direction the figure: a factor for each variable
   */
  public static Optional<Reach> of(LinearProgram program, double[] direction, Solver solver) {
    Optional<Double> least = least(program, direction, solver);
    if (least.isEmpty()) {
      return Optional.empty();
    }
    double[] turned = new double[direction.length];
    for (int j = 0; j < turned.length; j++) {
      turned[j] = -direction[j];
    }
    return least(program, turned, solver).map(most -> new Reach(least.get(), 0 - most));
  }

  private static Optional<Double> least(LinearProgram program, double[] costs, Solver solver) {
    return solver
        .solve(program.withCosts(costs))
        .byKind(
            optimum -> Optional.of(optimum.cost()),
            none -> Optional.empty(),
            endless -> Optional.of(Double.NEGATIVE_INFINITY),
            failed -> Optional.empty());
  }
}
