package dev.pellucid.engine.linear;

import java.util.List;

/**
 * Scales a program, lets a library find its optimum, makes the answer exact to the last bits, and
 * proves it; that there is none is proven too. What does not prove is no answer: then the next way
 * into the library is tried, and if none is left, it is told what did not hold.
 */
final class StandardSolver implements Solver {
  static final Solver INSTANCE =
      new StandardSolver(List.of(new OjAlgoSimplex(), new OjAlgoModel()));

  /** How many parts of a program with choices are looked at before it is given up. */
  private static final int MOST_PARTS = 20_000;

  private final List<Simplex> ways;

  StandardSolver(List<Simplex> ways) {
    this.ways = List.copyOf(ways);
  }

  @Override
  public Outcome solve(LinearProgram program) {
    return program.isInteger()
        ? new Choices(program, this::amounts, MOST_PARTS).search()
        : amounts(program);
  }

  private Outcome amounts(LinearProgram program) {
    Table table = Table.of(program);
    if (contradictsItself(table)) {
      return new Infeasible();
    }
    return continuous(program, table, true);
  }

  private Outcome continuous(LinearProgram program, Table table, boolean inOrder) {
    Scaled scaled = Scaled.of(table);
    Outcome first = tried(ways.get(0), program, table, scaled, inOrder);
    for (int way = 1; way < ways.size() && isFailed(first); way++) {
      Outcome next = tried(ways.get(way), program, table, scaled, inOrder);
      first = isFailed(next) ? first : next;
    }
    return first;
  }

  private static boolean isFailed(Outcome outcome) {
    return outcome.byKind(found -> false, none -> false, endless -> false, failed -> true);
  }

  private Outcome tried(
      Simplex way, LinearProgram program, Table table, Scaled scaled, boolean inOrder) {
    Simplex.Found found = way.find(scaled.table);
    return switch (found.state()) {
      case OPTIMAL -> proven(way, table, scaled, found, inOrder);
      case INFEASIBLE -> infeasible(program);
      case UNBOUNDED -> unbounded(program);
      case NONE -> new Failed("the solver gives no answer");
    };
  }

  private static Outcome proven(
      Simplex way, Table table, Scaled scaled, Simplex.Found found, boolean inOrder) {
    boolean priced = found.prices().length == table.constraints;
    Vertex vertex =
        Vertex.of(
            scaled.table, found.values(), priced ? found.prices() : new double[table.constraints]);
    Answer answer = Answer.of(table, scaled, vertex);
    if (!answer.proof().holds()) {
      double[] prices = BindingPrices.of(scaled.table, vertex.values, way);
      if (prices.length == table.constraints) {
        answer = Answer.of(table, scaled, Vertex.of(scaled.table, found.values(), prices));
      }
    }
    if (!answer.proof().holds()) {
      return new Failed(answer.proof().why());
    }
    return (inOrder ? Ties.broken(way, table, answer) : answer).optimum();
  }

  /** That nothing keeps all bounds is shown by the program in which they may be missed. */
  private Outcome infeasible(LinearProgram program) {
    LinearProgram elastic = Elastic.of(program);
    Outcome outcome = continuous(elastic, Table.of(elastic), false);
    return outcome.byKind(
        optimum ->
            Contradiction.of(program, optimum.prices()).holds()
                ? new Infeasible()
                : new Failed("the solver finds nothing that keeps all bounds, and there is"),
        none -> none,
        endless -> endless,
        failed -> failed);
  }

  /** That the cost falls without end is shown by a direction, and by values to begin from. */
  private Outcome unbounded(LinearProgram program) {
    LinearProgram elastic = Elastic.of(program);
    Outcome met = continuous(elastic, Table.of(elastic), false);
    if (met.optimum().map(o -> Contradiction.of(program, o.prices()).holds()).orElse(false)) {
      return new Infeasible();
    }
    LinearProgram directions = Recession.of(program);
    Outcome outcome = continuous(directions, Table.of(directions), false);
    return outcome.byKind(
        optimum ->
            optimum.cost() < 0
                ? new Unbounded()
                : new Failed("the solver finds that the cost falls without end, and it does not"),
        none -> none,
        endless -> endless,
        failed -> failed);
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
