package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.LinearProgram;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the prices of a program move when its costs do, while the same bounds bind: what stands
 * between its bounds has a reduced cost of zero before and after, which is as many equations as
 * there are prices.
 */
final class Basis {
  private static final double LEAST_PIVOT = 1e-12;

  private Basis() {}

  /**
   * By the place of each constraint; empty where more binds than needs to, so that prices are not
   * settled by what is between its bounds.
   *
   * @param direction of the costs
   */
  static Optional<double[]> moved(Answer.Found found, double[] direction) {
    LinearProgram program = found.program();
    List<Integer> between = new ArrayList<>();
    for (int j = 0; j < program.variables().size(); j++) {
      if (found.optimum().boundPrice(j) == 0) {
        between.add(j);
      }
    }
    List<Integer> priced = new ArrayList<>();
    for (int i = 0; i < program.constraints().size(); i++) {
      if (found.optimum().price(i) != 0) {
        priced.add(i);
      }
    }
    int size = between.size();
    if (priced.size() != size) {
      return Optional.empty();
    }
    double[][] equations = new double[size][size + 1];
    for (int j = 0; j < size; j++) {
      for (int i = 0; i < size; i++) {
        equations[j][i] = program.constraints().get(priced.get(i)).coefficient(between.get(j));
      }
      equations[j][size] = direction[between.get(j)];
    }
    if (!solve(equations)) {
      return Optional.empty();
    }
    double[] moved = new double[program.constraints().size()];
    for (int i = 0; i < size; i++) {
      moved[priced.get(i)] = equations[i][size];
    }
    return Optional.of(moved);
  }

  /** By elimination, the largest pivot of each column; false where there is none. */
  private static boolean solve(double[][] equations) {
    int size = equations.length;
    for (int k = 0; k < size; k++) {
      int best = k;
      for (int row = k + 1; row < size; row++) {
        best = Math.abs(equations[row][k]) > Math.abs(equations[best][k]) ? row : best;
      }
      double[] pivot = equations[best];
      equations[best] = equations[k];
      equations[k] = pivot;
      if (Math.abs(pivot[k]) < LEAST_PIVOT) {
        return false;
      }
      for (int row = 0; row < size; row++) {
        double times = row == k ? 0 : equations[row][k] / pivot[k];
        for (int column = k; times != 0 && column <= size; column++) {
          equations[row][column] -= times * pivot[column];
        }
      }
    }
    for (int k = 0; k < size; k++) {
      equations[k][size] /= equations[k][k];
    }
    return true;
  }
}
