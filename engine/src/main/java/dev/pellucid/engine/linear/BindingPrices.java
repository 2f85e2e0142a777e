package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Prices from the values alone, where a library tells none or wrong ones: those of the bounds at
 * which the values stand, that leave no variable between its bounds a reduced cost, and none at a
 * bound one that pulls it off. Of all such prices these have the least sum of sizes.
 */
final class BindingPrices {
  private BindingPrices() {}

  /** Empty where the library finds none. */
  static double[] of(Table scaled, double[] values, Simplex simplex) {
    List<double[]> columns = new ArrayList<>();
    List<Integer> rows = new ArrayList<>();
    for (int i = 0; i < scaled.constraints; i++) {
      double sum = Table.dot(scaled.rows[i], values);
      if (Vertex.isNear(sum, scaled.rowLow[i])) {
        columns.add(scaled.rows[i]);
        rows.add(i);
      }
      if (Vertex.isNear(sum, scaled.rowHigh[i])) {
        columns.add(negative(scaled.rows[i]));
        rows.add(~i);
      }
    }
    double[] prices = new double[scaled.constraints];
    if (columns.isEmpty()) {
      return prices;
    }
    Simplex.Found found = simplex.find(dual(scaled, values, columns));
    if (found.state() != Simplex.State.OPTIMAL) {
      return new double[0];
    }
    for (int k = 0; k < rows.size(); k++) {
      int row = rows.get(k);
      prices[row < 0 ? ~row : row] += row < 0 ? -found.values()[k] : found.values()[k];
    }
    return prices;
  }

  private static double[] negative(double[] row) {
    double[] negative = new double[row.length];
    for (int j = 0; j < row.length; j++) {
      negative[j] = -row[j];
    }
    return negative;
  }

  /** A variable for each bound at which a constraint stands, a row for each variable. */
  private static Table dual(Table scaled, double[] values, List<double[]> columns) {
    int size = columns.size();
    double[][] rows = new double[scaled.variables][size];
    double[] least = new double[scaled.variables];
    double[] most = new double[scaled.variables];
    for (int j = 0; j < scaled.variables; j++) {
      for (int k = 0; k < size; k++) {
        rows[j][k] = columns.get(k)[j];
      }
      boolean atLow = values[j] == scaled.low[j];
      boolean atHigh = values[j] == scaled.high[j];
      least[j] = atLow ? Double.NEGATIVE_INFINITY : scaled.cost[j];
      most[j] = atHigh ? Double.POSITIVE_INFINITY : scaled.cost[j];
    }
    double[] none = new double[size];
    double[] endless = new double[size];
    double[] one = new double[size];
    Arrays.fill(endless, Double.POSITIVE_INFINITY);
    Arrays.fill(one, 1);
    return new Table(rows, least, most, none, endless, one);
  }
}
