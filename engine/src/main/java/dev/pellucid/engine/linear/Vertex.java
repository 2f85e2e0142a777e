package dev.pellucid.engine.linear;

import java.util.Arrays;

/**
 * Values and prices of a scaled program made exact to the last bits: values that are next to a
 * bound are put on it, and the others follow from the constraints that are next to a bound, once
 * more, as prices follow from the variables between their bounds. What is found is as near to
 * nothing as rounding lets it be, or else it stays as it was.
 */
final class Vertex {
  /** How near to a bound is on it, in a scaled program. */
  static final double NEAR = 1e-9;

  /** A pivot below this is none. */
  private static final double LEAST_PIVOT = 1e-9;

  /** What a row whose price is nought counts for against one that has a price. */
  private static final double UNPRICED = 1e-2;

  final double[] values;
  final double[] prices;
  private final Table scaled;

  /** The variables between their bounds, and how many there are. */
  private final int[] between;

  /** The constraints at a bound, and how many there are. */
  private final int[] tight;

  private Vertex(Table scaled, double[] values, double[] prices) {
    this.scaled = scaled;
    this.values = values;
    this.prices = prices;
    this.between = putOnBounds();
    this.tight = tight();
  }

  static Vertex of(Table scaled, double[] values, double[] prices) {
    Vertex vertex = new Vertex(scaled, values.clone(), prices.clone());
    vertex.refine();
    return vertex;
  }

  private int[] putOnBounds() {
    int[] found = new int[values.length];
    int count = 0;
    for (int j = 0; j < values.length; j++) {
      if (isNear(values[j], scaled.low[j])) {
        values[j] = scaled.low[j];
      } else if (isNear(values[j], scaled.high[j])) {
        values[j] = scaled.high[j];
      } else {
        found[count++] = j;
      }
    }
    return Arrays.copyOf(found, count);
  }

  static boolean isNear(double value, double bound) {
    return Double.isFinite(bound) && Math.abs(value - bound) <= NEAR * Math.max(1, Math.abs(bound));
  }

  private int[] tight() {
    int[] found = new int[prices.length];
    int count = 0;
    for (int i = 0; i < prices.length; i++) {
      double sum = Table.dot(scaled.rows[i], values);
      if (isNear(sum, scaled.rowLow[i]) || isNear(sum, scaled.rowHigh[i])) {
        found[count++] = i;
      } else {
        prices[i] = 0;
      }
    }
    return Arrays.copyOf(found, count);
  }

  private double bound(int i) {
    double sum = Table.dot(scaled.rows[i], values);
    boolean atLow = Math.abs(sum - scaled.rowLow[i]) <= Math.abs(sum - scaled.rowHigh[i]);
    return atLow ? scaled.rowLow[i] : scaled.rowHigh[i];
  }

  private void refine() {
    int size = between.length;
    if (size == 0 || tight.length < size) {
      return;
    }
    double[][] matrix = new double[tight.length][size];
    double[] missing = new double[tight.length];
    for (int t = 0; t < tight.length; t++) {
      double[] row = scaled.rows[tight[t]];
      for (int k = 0; k < size; k++) {
        matrix[t][k] = row[between[k]];
      }
      missing[t] = bound(tight[t]) - Table.dot(row, values);
    }
    int[] order = eliminate(matrix);
    if (order.length == 0) {
      return;
    }
    refineValues(matrix, order, missing);
    refinePrices(matrix, order);
  }

  /**
   * Rows in the order of their pivots; matrix becomes their triangles, L without its ones and U.
   * Empty where the rows do not settle the variables.
   */
  private int[] eliminate(double[][] matrix) {
    int size = between.length;
    int[] order = new int[tight.length];
    Arrays.setAll(order, t -> t);
    for (int k = 0; k < size; k++) {
      int best = pivot(matrix, order, k);
      int swapped = order[k];
      order[k] = order[best];
      order[best] = swapped;
      double[] pivotRow = matrix[order[k]];
      double pivot = pivotRow[k];
      if (Math.abs(pivot) < LEAST_PIVOT) {
        return new int[0];
      }
      for (int t = k + 1; t < order.length; t++) {
        double[] row = matrix[order[t]];
        if (row[k] != 0) {
          double factor = row[k] / pivot;
          row[k] = factor;
          for (int c = k + 1; c < size; c++) {
            row[c] -= factor * pivotRow[c];
          }
        }
      }
    }
    return order;
  }

  private int pivot(double[][] matrix, int[] order, int k) {
    int best = k;
    double most = -1;
    for (int t = k; t < order.length; t++) {
      double weight = prices[tight[order[t]]] != 0 ? 1 : UNPRICED;
      double size = Math.abs(matrix[order[t]][k]) * weight;
      if (size > most) {
        most = size;
        best = t;
      }
    }
    return best;
  }

  private void refineValues(double[][] lu, int[] order, double[] missing) {
    int size = between.length;
    double[] step = new double[size];
    for (int k = 0; k < size; k++) {
      double sum = missing[order[k]];
      for (int c = 0; c < k; c++) {
        sum -= lu[order[k]][c] * step[c];
      }
      step[k] = sum;
    }
    for (int k = size - 1; k >= 0; k--) {
      double sum = step[k];
      for (int c = k + 1; c < size; c++) {
        sum -= lu[order[k]][c] * step[c];
      }
      step[k] = sum / lu[order[k]][k];
    }
    for (int k = 0; k < size; k++) {
      int j = between[k];
      values[j] = Math.min(Math.max(values[j] + step[k], scaled.low[j]), scaled.high[j]);
    }
  }

  /** Solves the transposed: U'L' of the step is what the reduced costs are away from zero. */
  private void refinePrices(double[][] lu, int[] order) {
    int size = between.length;
    double[] step = new double[size];
    for (int k = 0; k < size; k++) {
      step[k] = reduced(between[k]);
    }
    for (int k = 0; k < size; k++) {
      for (int c = 0; c < k; c++) {
        step[k] -= lu[order[c]][k] * step[c];
      }
      step[k] /= lu[order[k]][k];
    }
    for (int k = size - 1; k >= 0; k--) {
      for (int c = k + 1; c < size; c++) {
        step[k] -= lu[order[c]][k] * step[c];
      }
    }
    for (int k = 0; k < size; k++) {
      prices[tight[order[k]]] += step[k];
    }
  }

  private double reduced(int j) {
    double sum = scaled.cost[j];
    for (int i : tight) {
      sum -= scaled.rows[i][j] * prices[i];
    }
    return sum;
  }
}
