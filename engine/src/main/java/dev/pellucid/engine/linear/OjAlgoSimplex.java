package dev.pellucid.engine.linear;

import java.util.Optional;
import java.util.function.Supplier;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * The simplex solver of ojAlgo. It takes rows with a high bound and rows of equality alone, so a
 * low bound is a row turned round. It tells first the multipliers of the rows with a bound, in
 * their order and zero or more, and then those of the equalities, whose sign is the opposite of
 * that of a price.
 */
final class OjAlgoSimplex implements Simplex {
  @Override
  public Found find(Table scaled) {
    Optimisation.Result result = builder(scaled).solve();
    Optimisation.State state = result.getState();
    if (state.isOptimal()) {
      double[] values = new double[scaled.variables];
      for (int j = 0; j < values.length; j++) {
        values[j] = result.doubleValue(j);
      }
      return new Found(State.OPTIMAL, values, prices(scaled, result.getDualSolution()));
    }
    if (state == Optimisation.State.INFEASIBLE) {
      return Found.none(State.INFEASIBLE);
    }
    return Found.none(state == Optimisation.State.UNBOUNDED ? State.UNBOUNDED : State.NONE);
  }

  private static LinearSolver.Builder builder(Table scaled) {
    LinearSolver.Builder builder = LinearSolver.newGeneralBuilder(scaled.cost.clone());
    builder.lower(scaled.low.clone());
    builder.upper(scaled.high.clone());
    for (int i = 0; i < scaled.constraints; i++) {
      double[] row = scaled.rows[i];
      if (isEquality(scaled, i)) {
        builder.equality(scaled.rowLow[i], row);
        continue;
      }
      if (hasHigh(scaled, i)) {
        builder.inequality(scaled.rowHigh[i], row);
      }
      if (hasLow(scaled, i)) {
        double[] turned = new double[row.length];
        for (int j = 0; j < row.length; j++) {
          turned[j] = -row[j];
        }
        builder.inequality(-scaled.rowLow[i], turned);
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
    return next == multipliers.size() ? prices : new double[0];
  }
}
