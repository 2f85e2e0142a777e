package dev.pellucid.engine.linear;

import java.util.List;

/** A program as plain arrays, for those who count in it; nobody changes them. */
final class Table {
  final int variables;
  final int constraints;
  final double[][] rows;
  final double[] rowLow;
  final double[] rowHigh;
  final double[] low;
  final double[] high;
  final double[] cost;

  Table(
      double[][] rows,
      double[] rowLow,
      double[] rowHigh,
      double[] low,
      double[] high,
      double[] cost) {
    this.variables = cost.length;
    this.constraints = rows.length;
    this.rows = rows;
    this.rowLow = rowLow;
    this.rowHigh = rowHigh;
    this.low = low;
    this.high = high;
    this.cost = cost;
  }

  /** Of amounts alone: what is to be chosen besides is left out. */
  static Table of(LinearProgram program) {
    List<Variable> variables = program.variables();
    List<Constraint> constraints = program.constraints();
    double[] low = new double[variables.size()];
    double[] high = new double[variables.size()];
    double[] cost = new double[variables.size()];
    for (int j = 0; j < low.length; j++) {
      Variable variable = variables.get(j);
      low[j] = variable.low();
      high[j] = variable.high();
      cost[j] = variable.cost();
    }
    double[][] rows = new double[constraints.size()][];
    double[] rowLow = new double[rows.length];
    double[] rowHigh = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      Constraint constraint = constraints.get(i);
      rows[i] = constraint.row();
      rowLow[i] = constraint.low();
      rowHigh[i] = constraint.high();
    }
    return new Table(rows, rowLow, rowHigh, low, high, cost);
  }

  static double dot(double[] row, double[] x) {
    double sum = 0;
    for (int j = 0; j < row.length; j++) {
      sum += row[j] * x[j];
    }
    return sum;
  }
}
