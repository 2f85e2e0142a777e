package dev.pellucid.engine.benchmark;

import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Variable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * How long it takes to solve a linear program and to prove the answer, as a ratio to the bare call
 * of the library on the same rows, each divided by its greatest coefficient (as they are, with
 * coefficients from 0.0000001 to 100, the library calls some of them impossible). Programs have 60
 * variables that add up to 100, and 45 constraints.
 *
 * <p>Arguments: the number of programs and of rounds.
 */
public final class LinearBenchmark {
  private static final long SEED = 20_261_128;
  private static final int WARM_UP = 10;
  private static final int VARIABLES = 60;
  private static final int CONSTRAINTS = 45;
  private static final double TOTAL = 100;

  private LinearBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    int count = Integer.parseInt(arguments[0]);
    int rounds = Integer.parseInt(arguments[1]);
    Random random = new Random(SEED);
    List<LinearProgram> programs = new ArrayList<>();
    for (int number = 0; number < count; number++) {
      programs.add(program(random));
    }
    List<Contender> contenders =
        List.of(
            new Contender(
                "bare call of the library",
                () -> programs.stream().mapToInt(LinearBenchmark::bare).sum()),
            new Contender(
                "scaled, solved and proven",
                () -> programs.stream().mapToInt(LinearBenchmark::proven).sum()));
    System.out.println();
    System.out.print(new Rounds(contenders, 0, count).run(1, WARM_UP, rounds));
  }

  private static int proven(LinearProgram program) {
    return Solver.standard().solve(program).optimum().isPresent() ? 1 : 0;
  }

  private static int bare(LinearProgram program) {
    int size = program.variables().size();
    double[] costs = new double[size];
    double[] lows = new double[size];
    double[] highs = new double[size];
    for (int j = 0; j < size; j++) {
      Variable variable = program.variables().get(j);
      costs[j] = variable.cost();
      lows[j] = variable.low();
      highs[j] = variable.high();
    }
    LinearSolver.Builder builder = LinearSolver.newBuilder(costs);
    builder.lower(lows).upper(highs);
    for (Constraint constraint : program.constraints()) {
      add(builder, constraint);
    }
    return builder.solve().getState().isOptimal() ? 1 : 0;
  }

  private static void add(LinearSolver.Builder builder, Constraint constraint) {
    double[] row = constraint.coefficients();
    double greatest = Arrays.stream(row).map(Math::abs).max().orElse(1);
    double[] turned = new double[row.length];
    for (int j = 0; j < row.length; j++) {
      row[j] /= greatest;
      turned[j] = -row[j];
    }
    if (constraint.low() == constraint.high()) {
      builder.equality(constraint.low() / greatest, row);
      return;
    }
    if (Double.isFinite(constraint.high())) {
      builder.inequality(constraint.high() / greatest, row);
    }
    if (Double.isFinite(constraint.low())) {
      builder.inequality(-constraint.low() / greatest, turned);
    }
  }

  /** One that can be met, by shares that are drawn first. */
  private static LinearProgram program(Random random) {
    double[] shares = random.doubles(VARIABLES).map(x -> x < 0.5 ? 0 : x).toArray();
    double sum = Arrays.stream(shares).sum();
    List<Variable> variables = new ArrayList<>();
    for (int j = 0; j < VARIABLES; j++) {
      shares[j] *= TOTAL / sum;
      double high = Math.max(shares[j], 5 + 60 * random.nextDouble());
      variables.add(Variable.of(0, high, 0.05 + 6 * random.nextDouble()));
    }
    double[] ones = new double[VARIABLES];
    Arrays.fill(ones, 1);
    List<Constraint> constraints = new ArrayList<>();
    constraints.add(Constraint.of(ones, TOTAL, TOTAL));
    while (constraints.size() < CONSTRAINTS) {
      double scale = Math.pow(10, -7 + 9 * random.nextDouble());
      double[] contents = random.doubles(VARIABLES).map(x -> x < 0.38 ? 0 : scale * x).toArray();
      double at = Constraint.of(contents, 0, 0).at(shares);
      double room = 0.3 * at * random.nextDouble();
      int kind = random.nextInt(3);
      constraints.add(
          Constraint.of(
              contents,
              kind == 0 ? Double.NEGATIVE_INFINITY : at - room,
              kind == 1 ? Double.POSITIVE_INFINITY : at + room));
    }
    return new LinearProgram(variables, constraints);
  }
}
