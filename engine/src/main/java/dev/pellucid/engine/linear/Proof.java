package dev.pellucid.engine.linear;

/**
 * Shows from values, prices and the program alone that the values keep all bounds and that nothing
 * that keeps them costs less. With prices y of the constraints, every x that keeps the bounds costs
 * at least {@code sum of y times the bound that y presses on + sum of (c - A'y) times the bound
 * that it presses on}; where that is what the values cost, they are of least cost.
 *
 * <p>All sizes are relative to those of the terms that are added, so no scale is needed.
 */
final class Proof {
  static final double CLOSE = 1e-9;

  /** What sums of doubles may be off by; a reduced cost below it is none. */
  private static final double ROUNDING = 1e-12;

  /** How far a sum of greater terms that cancel out may be from that of the values. */
  private static final double CANCELLED = 1e-4;

  private final double missed;
  private final double unpriced;
  private final double gap;
  private final double cost;
  private final double[] boundPrices;

  /**
   * @param missed by how much a constraint or a bound is missed, at most
   * @param unpriced the size of a price on a bound that is infinite, at most
   * @param gap between the cost of the values and the least cost that the prices show
   * @param cost of the values
   * @param boundPrices of the variables, as they follow from the prices
   */
  private Proof(double missed, double unpriced, double gap, double cost, double[] boundPrices) {
    this.missed = missed;
    this.unpriced = unpriced;
    this.gap = gap;
    this.cost = cost;
    this.boundPrices = boundPrices;
  }

  static Proof of(Table table, double[] x, double[] y) {
    double missed = missed(table, x);
    double[] reduced = table.cost.clone();
    double[] size = new double[reduced.length];
    reduce(table, y, reduced, size);
    Terms dual = new Terms();
    double unpriced = Math.max(priced(table, y, size, dual), pulled(table, reduced, size, dual));
    Terms primal = new Terms();
    for (int j = 0; j < x.length; j++) {
      primal.add(table.cost[j] * x[j]);
    }
    double gap = gap(primal, dual);
    boolean isCounted = Double.isFinite(missed + unpriced + gap + dual.size);
    return isCounted
        ? new Proof(missed, unpriced, gap, primal.sum, reduced)
        : new Proof(1, 1, 1, primal.sum, reduced);
  }

  /** What is left of each cost after the prices of what the variable brings. */
  private static void reduce(Table table, double[] y, double[] reduced, double[] size) {
    for (int j = 0; j < size.length; j++) {
      size[j] = Math.abs(reduced[j]);
    }
    for (int i = 0; i < y.length; i++) {
      if (y[i] == 0) {
        continue;
      }
      double[] row = table.rows[i];
      for (int j = 0; j < row.length; j++) {
        double part = row[j] * y[i];
        reduced[j] -= part;
        size[j] += Math.abs(part);
      }
    }
  }

  /** Adds what the prices of constraints bring, and says what stands on no bound. */
  private static double priced(Table table, double[] y, double[] size, Terms dual) {
    double unpriced = 0;
    for (int i = 0; i < y.length; i++) {
      double bound = y[i] > 0 ? table.rowLow[i] : table.rowHigh[i];
      if (y[i] == 0) {
        continue;
      }
      if (Double.isInfinite(bound)) {
        unpriced = Math.max(unpriced, weight(table, i, y[i], size));
      } else {
        dual.add(y[i] * bound);
      }
    }
    return unpriced;
  }

  /** The same of what is left of the costs; what is no more than rounding becomes zero. */
  private static double pulled(Table table, double[] reduced, double[] size, Terms dual) {
    double unpriced = 0;
    for (int j = 0; j < reduced.length; j++) {
      if (Math.abs(reduced[j]) <= ROUNDING * size[j]) {
        reduced[j] = 0;
        continue;
      }
      double bound = reduced[j] > 0 ? table.low[j] : table.high[j];
      if (Double.isInfinite(bound)) {
        unpriced = Math.max(unpriced, Math.abs(reduced[j]) / size[j]);
        reduced[j] = 0;
      } else {
        dual.add(reduced[j] * bound);
      }
    }
    return unpriced;
  }

  /** How much a price on a bound that is infinite shifts the greatest of the reduced costs. */
  private static double weight(Table table, int i, double price, double[] size) {
    double weight = 0;
    for (int j = 0; j < size.length; j++) {
      if (table.rows[i][j] != 0) {
        weight = Math.max(weight, Math.abs(table.rows[i][j] * price) / size[j]);
      }
    }
    return weight;
  }

  private static double gap(Terms primal, Terms dual) {
    double apart = Math.abs(primal.sum - dual.sum);
    double measure = Math.max(Math.max(Math.abs(dual.sum), primal.size), CANCELLED * dual.size);
    return apart == 0 ? 0 : apart / measure;
  }

  /** By how much the worst is missed; what is no number is missed wholly. */
  private static double missed(Table table, double[] x) {
    double missed = 0;
    for (int j = 0; j < x.length; j++) {
      double apart = apart(x[j], table.low[j], table.high[j]);
      if (apart != 0) {
        missed = Math.max(missed, apart / (Math.abs(x[j]) + apart));
      }
    }
    for (int i = 0; i < table.constraints; i++) {
      double sum = Table.dot(table.rows[i], x);
      double apart = apart(sum, table.rowLow[i], table.rowHigh[i]);
      if (apart != 0) {
        missed = Math.max(missed, apart / size(table.rows[i], x, apart));
      }
    }
    return missed;
  }

  private static double apart(double sum, double low, double high) {
    if (sum < low) {
      return low - sum;
    }
    if (sum > high) {
      return sum - high;
    }
    return Double.isFinite(sum) ? 0 : Double.NaN;
  }

  /**
   * Of the terms; a part of the greatest that there could be, where all of them are next to none.
   */
  private static double size(double[] row, double[] x, double apart) {
    double size = apart;
    double greatest = 0;
    double most = 0;
    for (int j = 0; j < row.length; j++) {
      size += Math.abs(row[j] * x[j]);
      greatest = Math.max(greatest, Math.abs(row[j]));
      most = Math.max(most, Math.abs(x[j]));
    }
    return Math.max(size, CANCELLED * greatest * most);
  }

  double cost() {
    return cost;
  }

  /** Nobody changes them. */
  double[] boundPrices() {
    return boundPrices;
  }

  boolean holds() {
    return missed <= CLOSE && unpriced <= CLOSE && gap <= CLOSE;
  }

  /** The gap or the residual of a price, whichever is more. */
  double open() {
    return Math.max(gap, unpriced);
  }

  /** What does not hold, in words. */
  String why() {
    if (missed > CLOSE) {
      return "a bound is missed by " + missed + " of its size";
    }
    return unpriced > CLOSE
        ? "a price of " + unpriced + " of its size stands on a bound that is infinite"
        : "the cost is " + gap + " of itself from what is proven to be the least";
  }

  /** A sum and the size of what was added. */
  private static final class Terms {
    private double sum;
    private double size;

    void add(double term) {
      sum += term;
      size += Math.abs(term);
    }
  }
}
