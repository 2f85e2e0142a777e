package dev.pellucid.engine.linear;

/**
 * Shows that nothing keeps all bounds of a program: weights y of the constraints, such that {@code
 * sum of y times the bound that y presses on + sum of (-A'y) times the bound that it presses on} is
 * above zero. For any x that keeps the bounds this sum is at most {@code y'Ax - y'Ax}, which is
 * zero.
 */
final class Contradiction {
  private static final double ROUNDING = 1e-11;

  private final double[] weights;
  private final double[] boundWeights;
  private final double size;

  /**
   * @param size of what the sum is above zero, as a part of its terms; zero where it shows nothing
   */
  private Contradiction(double[] weights, double[] boundWeights, double size) {
    this.weights = weights;
    this.boundWeights = boundWeights;
    this.size = size;
  }

  static Contradiction of(LinearProgram program, double[] prices) {
    Table table = Table.of(program);
    double[] weights = new double[table.constraints];
    double[] left = new double[table.variables];
    double[] terms = new double[table.variables];
    double sum = 0;
    double size = 0;
    for (int i = 0; i < weights.length; i++) {
      double bound = prices[i] > 0 ? table.rowLow[i] : table.rowHigh[i];
      if (prices[i] == 0 || Double.isInfinite(bound)) {
        continue;
      }
      weights[i] = prices[i];
      sum += weights[i] * bound;
      size += Math.abs(weights[i] * bound);
      for (int j = 0; j < left.length; j++) {
        double part = table.rows[i][j] * weights[i];
        left[j] -= part;
        terms[j] += Math.abs(part);
      }
    }
    for (int j = 0; j < left.length; j++) {
      if (Math.abs(left[j]) <= ROUNDING * terms[j]) {
        left[j] = 0;
        continue;
      }
      double bound = left[j] > 0 ? table.low[j] : table.high[j];
      if (Double.isInfinite(bound)) {
        return new Contradiction(weights, left, 0);
      }
      sum += left[j] * bound;
      size += Math.abs(left[j] * bound);
    }
    return new Contradiction(weights, left, sum > 0 ? sum / size : 0);
  }

  /** Of a constraint: zero where it has no part in it, below zero where its high has. */
  double weight(int constraint) {
    return weights[constraint];
  }

  /** The same of a variable. */
  double boundWeight(int variable) {
    return boundWeights[variable];
  }

  boolean holds() {
    return size > Proof.CLOSE;
  }
}
