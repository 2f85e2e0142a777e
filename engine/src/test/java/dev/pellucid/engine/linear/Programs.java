package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Random programs of the kind that a recipe makes, from a seed. */
final class Programs {
  private static final double TOTAL = 100;
  private static final double LEAST_EXPONENT = -7;
  private static final double MOST_EXPONENT = 2;

  private final Random random;

  Programs(long seed) {
    this.random = new Random(seed);
  }

  /** From 10 to 60 variables that add up to 100, from 5 to 45 constraints; it can be met. */
  LinearProgram feasible() {
    return feasible(10 + random.nextInt(51), 5 + random.nextInt(41));
  }

  LinearProgram feasible(int size, int rows) {
    double[] x = shares(size);
    List<Variable> variables = new ArrayList<>();
    for (int j = 0; j < size; j++) {
      double low = random.nextInt(8) == 0 ? x[j] * random.nextDouble() : 0;
      double high =
          switch (random.nextInt(4)) {
            case 0 -> Double.POSITIVE_INFINITY;
            case 1 -> TOTAL;
            case 2 -> x[j] * (1 + random.nextDouble()) + 1;
            default -> Math.max(x[j], 5 + 60 * random.nextDouble());
          };
      variables.add(Variable.of(low, high, 0.05 + 6 * random.nextDouble()));
    }
    List<Constraint> constraints = new ArrayList<>();
    constraints.add(total(size));
    while (constraints.size() < rows) {
      constraints.add(keptBy(x, contents(size)));
    }
    return new LinearProgram(variables, constraints);
  }

  /** The same kind, where one bound more contradicts what was there. */
  LinearProgram infeasible() {
    LinearProgram program = feasible(10 + random.nextInt(21), 5 + random.nextInt(16));
    double[] contents = contents(program.variables().size());
    Reach reach = Reach.of(program, contents, Solver.standard()).orElseThrow();
    double apart =
        (0.01 + random.nextDouble()) * (reach.most() - reach.least() + 0.01 * reach.most());
    return random.nextBoolean()
        ? program.plus(Constraint.of(contents, reach.most() + apart, Double.POSITIVE_INFINITY))
        : program.plus(Constraint.of(contents, Double.NEGATIVE_INFINITY, reach.least() - apart));
  }

  static Constraint total(int size) {
    double[] ones = new double[size];
    Arrays.fill(ones, 1);
    return Constraint.of(ones, TOTAL, TOTAL);
  }

  private double[] shares(int size) {
    double[] x = new double[size];
    double sum = 0;
    x[random.nextInt(size)] = 0.5;
    for (int j = 0; j < size; j++) {
      x[j] += random.nextBoolean() ? random.nextDouble() : 0;
      sum += x[j];
    }
    for (int j = 0; j < size; j++) {
      x[j] *= TOTAL / sum;
    }
    return x;
  }

  /** What each variable brings of one thing, of which there is much or next to nothing. */
  private double[] contents(int size) {
    double scale =
        Math.pow(10, LEAST_EXPONENT + (MOST_EXPONENT - LEAST_EXPONENT) * random.nextDouble());
    double[] contents = new double[size];
    contents[random.nextInt(size)] = scale;
    for (int j = 0; j < size; j++) {
      if (random.nextDouble() < 0.62) {
        double wide = random.nextInt(5) == 0 ? 0.001 + random.nextDouble() : 1;
        contents[j] = scale * (0.02 + random.nextDouble()) * wide;
      }
    }
    return contents;
  }

  private Constraint keptBy(double[] x, double[] contents) {
    double at = Constraint.of(contents, 0, 0).at(x);
    double room = at * 0.3 * random.nextDouble();
    return switch (random.nextInt(3)) {
      case 0 -> Constraint.of(contents, at - room, Double.POSITIVE_INFINITY);
      case 1 -> Constraint.of(contents, Double.NEGATIVE_INFINITY, at + room);
      default -> Constraint.of(contents, at - room, at + room * random.nextDouble());
    };
  }

  /**
   * Small whole numbers, so that bounds meet in one point and costs are alike; a variable may be
   * without bounds, a row without coefficients, a low above its high.
   */
  LinearProgram degenerate() {
    int size = 1 + random.nextInt(7);
    List<Variable> variables = new ArrayList<>();
    for (int j = 0; j < size; j++) {
      double[] bounds = bounds(3, 5);
      variables.add(Variable.of(bounds[0], bounds[1], random.nextInt(5) - 1));
    }
    List<Constraint> constraints = new ArrayList<>();
    for (int rows = random.nextInt(7); rows > 0; rows--) {
      double[] row = new double[size];
      boolean isEmpty = random.nextInt(12) == 0;
      for (int j = 0; j < size; j++) {
        row[j] = isEmpty || random.nextBoolean() ? 0 : random.nextInt(5) - 1;
      }
      double[] bounds = bounds(4, 6);
      constraints.add(Constraint.of(row, bounds[0], bounds[1]));
    }
    return new LinearProgram(variables, constraints);
  }

  private double[] bounds(int lows, int highs) {
    double low = random.nextInt(4) == 0 ? Double.NEGATIVE_INFINITY : random.nextInt(lows) - 1;
    double high = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : random.nextInt(highs) - 1;
    if (random.nextInt(8) == 0 && Double.isFinite(low)) {
      high = low;
    }
    boolean isCrossed = low > high && random.nextInt(6) > 0;
    return isCrossed ? new double[] {high, low} : new double[] {low, high};
  }
}
