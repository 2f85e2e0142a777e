package dev.pellucid.engine.linear;

/**
 * Scales a program, lets a library find its optimum, makes the answer exact to the last bits, and
 * proves it. What does not prove is no answer.
 */
final class StandardSolver implements Solver {
  static final Solver INSTANCE = new StandardSolver(new OjAlgoSimplex());

  private final Simplex simplex;

  StandardSolver(Simplex simplex) {
    this.simplex = simplex;
  }

  @Override
  public Outcome solve(LinearProgram program) {
    Table table = Table.of(program);
    if (contradictsItself(table)) {
      return new Infeasible();
    }
    Scaled scaled = Scaled.of(table);
    Simplex.Found found = simplex.find(scaled.table);
    return switch (found.state()) {
      case OPTIMAL -> proven(table, scaled, found);
      case INFEASIBLE -> new Infeasible();
      case UNBOUNDED -> new Unbounded();
      case NONE -> new Failed("the solver gave no answer");
    };
  }

  private static Outcome proven(Table table, Scaled scaled, Simplex.Found found) {
    if (found.prices().length != table.constraints) {
      return new Failed("the solver told no prices");
    }
    Vertex vertex = Vertex.of(scaled.table, found.values(), found.prices());
    double[] values = scaled.values(vertex.values);
    double[] prices = scaled.prices(vertex.prices);
    Proof proof = Proof.of(table, values, prices);
    return proof.holds()
        ? new Optimum(proof.cost(), values, prices, proof.boundPrices(), proof.open(), false)
        : new Failed(proof.why());
  }

  private static boolean contradictsItself(Table table) {
    for (int j = 0; j < table.variables; j++) {
      if (table.low[j] > table.high[j]) {
        return true;
      }
    }
    for (int i = 0; i < table.constraints; i++) {
      if (table.rowLow[i] > table.rowHigh[i]) {
        return true;
      }
    }
    return false;
  }
}
