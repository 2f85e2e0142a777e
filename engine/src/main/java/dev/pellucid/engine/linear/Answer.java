package dev.pellucid.engine.linear;

/**
 * Values and prices of a program, with the proof of them.
 *
 * @param values one for each variable
 * @param prices one for each constraint
 */
record Answer(double[] values, double[] prices, Proof proof) {
  static Answer of(Table table, Scaled scaled, Vertex vertex) {
    return of(table, scaled.values(vertex.values), scaled.prices(vertex.prices));
  }

  static Answer of(Table table, double[] values, double[] prices) {
    return new Answer(values, prices, Proof.of(table, values, prices));
  }

  Optimum optimum() {
    return new Optimum(proof.cost(), values, prices, proof.boundPrices(), proof.open(), false);
  }
}
