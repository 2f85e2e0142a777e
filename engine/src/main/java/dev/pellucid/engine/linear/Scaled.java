package dev.pellucid.engine.linear;

import java.util.Arrays;

/**
 * A program whose rows and columns are multiplied so that its coefficients are of the size of one:
 * contents reach from 0.0000001 to 100, and solvers compare them with fixed tolerances. All factors
 * are powers of two, so nothing is rounded.
 */
final class Scaled {
  private static final int ROUNDS = 3;

  final Table table;
  private final double[] rowFactors;
  private final double[] columnFactors;
  private final double costFactor;

  private Scaled(Table table, double[] rowFactors, double[] columnFactors, double costFactor) {
    this.table = table;
    this.rowFactors = rowFactors;
    this.columnFactors = columnFactors;
    this.costFactor = costFactor;
  }

  static Scaled of(Table plain) {
    double[] byRow = new double[plain.constraints];
    double[] byColumn = new double[plain.variables];
    Arrays.fill(byRow, 1);
    Arrays.fill(byColumn, 1);
    for (int round = 0; round < ROUNDS; round++) {
      balanceRows(plain, byRow, byColumn);
      balanceColumns(plain, byRow, byColumn);
    }
    levelRows(plain, byRow, byColumn);
    powersOfTwo(byRow);
    powersOfTwo(byColumn);
    double costFactor = costFactor(plain.cost, byColumn);
    return new Scaled(scaled(plain, byRow, byColumn, costFactor), byRow, byColumn, costFactor);
  }

  /** The middle of each row, between its least and its greatest, becomes one. */
  private static void balanceRows(Table plain, double[] byRow, double[] byColumn) {
    for (int i = 0; i < byRow.length; i++) {
      double[] row = plain.rows[i];
      double least = Double.POSITIVE_INFINITY;
      double greatest = 0;
      for (int j = 0; j < row.length; j++) {
        double size = Math.abs(row[j]) * byColumn[j];
        if (size > 0) {
          least = Math.min(least, size);
          greatest = Math.max(greatest, size);
        }
      }
      byRow[i] = greatest > 0 ? 1 / Math.sqrt(least * greatest) : 1;
    }
  }

  private static void balanceColumns(Table plain, double[] byRow, double[] byColumn) {
    double[] least = new double[byColumn.length];
    double[] greatest = new double[byColumn.length];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int i = 0; i < byRow.length; i++) {
      double[] row = plain.rows[i];
      for (int j = 0; j < row.length; j++) {
        double size = Math.abs(row[j]) * byRow[i];
        if (size > 0) {
          least[j] = Math.min(least[j], size);
          greatest[j] = Math.max(greatest[j], size);
        }
      }
    }
    for (int j = 0; j < byColumn.length; j++) {
      byColumn[j] = greatest[j] > 0 ? 1 / Math.sqrt(least[j] * greatest[j]) : 1;
    }
  }

  /** The greatest of each row becomes one. */
  private static void levelRows(Table plain, double[] byRow, double[] byColumn) {
    for (int i = 0; i < byRow.length; i++) {
      double[] row = plain.rows[i];
      double greatest = 0;
      for (int j = 0; j < row.length; j++) {
        greatest = Math.max(greatest, Math.abs(row[j]) * byColumn[j]);
      }
      byRow[i] = greatest > 0 ? 1 / greatest : 1;
    }
  }

  private static void powersOfTwo(double[] factors) {
    for (int i = 0; i < factors.length; i++) {
      factors[i] = Math.scalb(1.0, Math.getExponent(factors[i]));
    }
  }

  private static double costFactor(double[] cost, double[] byColumn) {
    double greatest = 0;
    for (int j = 0; j < cost.length; j++) {
      greatest = Math.max(greatest, Math.abs(cost[j]) * byColumn[j]);
    }
    return greatest > 0 ? Math.scalb(1.0, -Math.getExponent(greatest)) : 1;
  }

  private static Table scaled(Table plain, double[] byRow, double[] byColumn, double costFactor) {
    int n = plain.variables;
    double[][] rows = new double[plain.constraints][n];
    double[] rowLow = new double[rows.length];
    double[] rowHigh = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < n; j++) {
        rows[i][j] = plain.rows[i][j] * byRow[i] * byColumn[j];
      }
      rowLow[i] = plain.rowLow[i] * byRow[i];
      rowHigh[i] = plain.rowHigh[i] * byRow[i];
    }
    double[] low = new double[n];
    double[] high = new double[n];
    double[] cost = new double[n];
    for (int j = 0; j < n; j++) {
      low[j] = plain.low[j] / byColumn[j];
      high[j] = plain.high[j] / byColumn[j];
      cost[j] = plain.cost[j] * byColumn[j] * costFactor;
    }
    return new Table(rows, rowLow, rowHigh, low, high, cost);
  }

  /** Values of the program as it was. */
  double[] values(double[] scaled) {
    double[] values = new double[scaled.length];
    for (int j = 0; j < values.length; j++) {
      values[j] = scaled[j] * columnFactors[j];
    }
    return values;
  }

  /** Prices of the program as it was. */
  double[] prices(double[] scaled) {
    double[] prices = new double[scaled.length];
    for (int i = 0; i < prices.length; i++) {
      prices[i] = scaled[i] * rowFactors[i] / costFactor;
    }
    return prices;
  }
}
