package dev.pellucid.engine.linear;

import java.util.Optional;
import java.util.function.Supplier;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * The simplex solver of ojAlgo. It is given only what it was found to be right about: each variable
 * has a finite low bound (one that has none is turned round, one that has no bound at all becomes
 * the difference of two), and a row has a high bound or is an equality (a low bound is a row turned
 * round). It tells first the multipliers of the rows with a bound, in their order and zero or more,
 * and then those of the equalities, whose sign is the opposite of that of a price.
 */
final class OjAlgoSimplex implements Simplex {
  /** Far more than any program of ours needs, so that none goes round for ever. */
  private static final int MOST_STEPS = 20_000;

  @Override
  public Found find(Table scaled) {
    Columns columns = Columns.of(scaled);
    Optimisation.Result result = builder(scaled, columns).build(options()).solve();
    Optimisation.State state = result.getState();
    if (state.isOptimal()) {
      double[] values = columns.values(result);
      return new Found(State.OPTIMAL, values, prices(scaled, result.getDualSolution()));
    }
    if (state == Optimisation.State.INFEASIBLE) {
      return Found.none(State.INFEASIBLE);
    }
    return Found.none(state == Optimisation.State.UNBOUNDED ? State.UNBOUNDED : State.NONE);
  }

  private static Optimisation.Options options() {
    Optimisation.Options options = new Optimisation.Options();
    options.iterations_abort = MOST_STEPS;
    return options;
  }

  private static LinearSolver.Builder builder(Table scaled, Columns columns) {
    LinearSolver.Builder builder = LinearSolver.newBuilder(columns.row(scaled.cost, 1));
    builder.lower(columns.low);
    builder.upper(columns.high);
    for (int i = 0; i < scaled.constraints; i++) {
      double[] row = scaled.rows[i];
      if (isEquality(scaled, i)) {
        builder.equality(scaled.rowLow[i], columns.row(row, 1));
        continue;
      }
      if (hasHigh(scaled, i)) {
        builder.inequality(scaled.rowHigh[i], columns.row(row, 1));
      }
      if (hasLow(scaled, i)) {
        builder.inequality(-scaled.rowLow[i], columns.row(row, -1));
      }
    }
    return builder;
  }

  private static boolean isEquality(Table scaled, int i) {
    return scaled.rowLow[i] == scaled.rowHigh[i];
  }

  private static boolean hasHigh(Table scaled, int i) {
    return !isEquality(scaled, i) && scaled.rowHigh[i] != Double.POSITIVE_INFINITY;
  }

  private static boolean hasLow(Table scaled, int i) {
    return !isEquality(scaled, i) && scaled.rowLow[i] != Double.NEGATIVE_INFINITY;
  }

  private static double[] prices(Table scaled, Optional<Supplier<Access1D<?>>> told) {
    if (told.isEmpty()) {
      return new double[0];
    }
    Access1D<?> multipliers = told.get().get();
    if (multipliers.size() != multipliers(scaled)) {
      return new double[0];
    }
    double[] prices = new double[scaled.constraints];
    int next = 0;
    for (int i = 0; i < prices.length; i++) {
      if (hasHigh(scaled, i)) {
        prices[i] -= multipliers.doubleValue(next++);
      }
      if (hasLow(scaled, i)) {
        prices[i] += multipliers.doubleValue(next++);
      }
    }
    for (int i = 0; i < prices.length; i++) {
      if (isEquality(scaled, i)) {
        prices[i] = -multipliers.doubleValue(next++);
      }
    }
    return prices;
  }

  private static int multipliers(Table scaled) {
    int count = 0;
    for (int i = 0; i < scaled.constraints; i++) {
      count += isEquality(scaled, i) || hasHigh(scaled, i) ? 1 : 0;
      count += hasLow(scaled, i) ? 1 : 0;
    }
    return count;
  }

  /** The columns that are given to the solver: each a variable, or one turned round. */
  private static final class Columns {
    private final int variables;
    private final int[] of;
    private final double[] sign;
    private final double[] low;
    private final double[] high;

    private Columns(int variables, int count) {
      this.variables = variables;
      this.of = new int[count];
      this.sign = new double[count];
      this.low = new double[count];
      this.high = new double[count];
    }

    static Columns of(Table scaled) {
      int count = scaled.variables;
      for (int j = 0; j < scaled.variables; j++) {
        count += Double.isInfinite(scaled.low[j]) && Double.isInfinite(scaled.high[j]) ? 1 : 0;
      }
      Columns columns = new Columns(scaled.variables, count);
      int next = 0;
      for (int j = 0; j < scaled.variables; j++) {
        double least = scaled.low[j];
        double most = scaled.high[j];
        if (!Double.isInfinite(least)) {
          columns.set(next++, j, 1, least, most);
        } else if (!Double.isInfinite(most)) {
          columns.set(next++, j, -1, -most, Double.POSITIVE_INFINITY);
        } else {
          columns.set(next++, j, 1, 0, Double.POSITIVE_INFINITY);
          columns.set(next++, j, -1, 0, Double.POSITIVE_INFINITY);
        }
      }
      return columns;
    }

    private void set(int column, int variable, double turned, double least, double most) {
      of[column] = variable;
      sign[column] = turned;
      low[column] = least;
      high[column] = most;
    }

    double[] row(double[] ofVariables, double turned) {
      double[] row = new double[of.length];
      for (int k = 0; k < row.length; k++) {
        row[k] = turned * sign[k] * ofVariables[of[k]];
      }
      return row;
    }

    double[] values(Optimisation.Result result) {
      double[] values = new double[variables];
      for (int k = 0; k < of.length; k++) {
        values[of[k]] += sign[k] * result.doubleValue(k);
      }
      return values;
    }
  }
}
