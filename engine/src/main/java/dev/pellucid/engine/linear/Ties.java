package dev.pellucid.engine.linear;

/**
 * Where other values cost the same, the answer shall not hang on the way in which a library went:
 * of all values of least cost those are taken that have the least of what comes late.
 */
final class Ties {
  private Ties() {}

  static Answer broken(Simplex way, Table table, Answer answer) {
    double[] reduced = answer.proof().boundPrices();
    double[] prices = answer.prices();
    int open = 0;
    for (int j = 0; j < reduced.length; j++) {
      open += reduced[j] == 0 && table.low[j] < table.high[j] ? 1 : 0;
    }
    for (double price : prices) {
      open -= price != 0 ? 1 : 0;
    }
    if (open <= 0) {
      return answer;
    }
    Table alike = alike(table, answer);
    Scaled scaled = Scaled.of(alike);
    Simplex.Found found = way.find(scaled.table);
    if (found.state() != Simplex.State.OPTIMAL) {
      return answer;
    }
    Vertex vertex = Vertex.of(scaled.table, found.values(), new double[table.constraints]);
    Answer first = Answer.of(table, scaled.values(vertex.values), prices);
    return first.proof().holds() ? first : answer;
  }

  /**
   * All that costs the same: what has a reduced cost stays where it is, and so do constraints that
   * have a price. What comes later is dearer.
   */
  private static Table alike(Table table, Answer answer) {
    double[] values = answer.values();
    double[] reduced = answer.proof().boundPrices();
    double[] low = table.low.clone();
    double[] high = table.high.clone();
    double[] cost = new double[low.length];
    for (int j = 0; j < low.length; j++) {
      if (reduced[j] != 0) {
        low[j] = values[j];
        high[j] = values[j];
      } else {
        cost[j] = j + 1;
      }
    }
    double[] rowLow = table.rowLow.clone();
    double[] rowHigh = table.rowHigh.clone();
    for (int i = 0; i < rowLow.length; i++) {
      if (answer.prices()[i] > 0) {
        rowHigh[i] = rowLow[i];
      } else if (answer.prices()[i] < 0) {
        rowLow[i] = rowHigh[i];
      }
    }
    return new Table(table.rows, rowLow, rowHigh, low, high, cost);
  }
}
