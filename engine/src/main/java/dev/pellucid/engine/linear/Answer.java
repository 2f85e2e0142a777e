package dev.pellucid.engine.linear;

/** Values and prices of a program, with the proof of them; nobody changes them. */
final class Answer {
  private final double[] values;
  private final double[] prices;
  private final Proof proof;

  private Answer(double[] values, double[] prices, Proof proof) {
    this.values = values;
    this.prices = prices;
    this.proof = proof;
  }

  static Answer of(Table table, Scaled scaled, Vertex vertex) {
    return of(table, scaled.values(vertex.values), scaled.prices(vertex.prices));
  }

  static Answer of(Table table, double[] values, double[] prices) {
    double[] x = withoutSignOfZero(values);
    double[] y = withoutSignOfZero(prices);
    return new Answer(x, y, Proof.of(table, x, y));
  }

  /** Zero from below is zero, so that the same is printed whichever way it was reached. */
  private static double[] withoutSignOfZero(double[] figures) {
    double[] same = new double[figures.length];
    for (int i = 0; i < same.length; i++) {
      same[i] = figures[i] + 0.0;
    }
    return same;
  }

  /** One for each variable. */
  double[] values() {
    return values;
  }

  /** One for each constraint. */
  double[] prices() {
    return prices;
  }

  Proof proof() {
    return proof;
  }

  Optimum optimum() {
    return new Optimum(proof.cost(), values, prices, proof.boundPrices(), proof.open(), false);
  }
}
