package dev.pellucid.engine.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** A library that errs, in each way in which it may, is told as such and never passed on. */
class WrongAnswersTest {
  private static final int PROGRAMS = 30;

  private static Solver erring(UnaryOperator<Simplex.Found> wrong) {
    Simplex right = new OjAlgoSimplex();
    return new StandardSolver(List.of(scaled -> wrong.apply(right.find(scaled))));
  }

  private static double[] changed(double[] values, int index, double by) {
    double[] changed = values.clone();
    changed[index % changed.length] += by;
    return changed;
  }

  private static Simplex.Found values(Simplex.Found found, int index, double by) {
    return found.values().length == 0
        ? found
        : new Simplex.Found(found.state(), changed(found.values(), index, by), found.prices());
  }

  private static String why(Solver solver, LinearProgram program) {
    return solver.solve(program).byKind(o -> "optimum", n -> "none", u -> "endless", Failed::why);
  }

  @Test
  void valuesThatMissABound() {
    Programs programs = new Programs(28);
    for (int number = 0; number < PROGRAMS; number++) {
      LinearProgram program = programs.feasible();
      int index = number;
      String why = why(erring(found -> values(found, index, 1)), program);
      assertTrue(why.matches("(a bound is missed|the cost is|a price of) .*"), why);
    }
  }

  @Test
  void valuesThatAreNoNumbers() {
    LinearProgram program = new Programs(29).feasible();
    String why = why(erring(found -> values(found, 3, Double.NaN)), program);
    assertTrue(why.startsWith("a bound is missed by 1.0 of its size"), why);
  }

  /** They keep all bounds, and something else costs less. */
  @Test
  void valuesThatAreNotTheBest() {
    Programs programs = new Programs(30);
    for (int number = 0; number < PROGRAMS; number++) {
      LinearProgram program = programs.feasible();
      Simplex dearest =
          scaled -> {
            double[] costs = scaled.cost.clone();
            for (int j = 0; j < costs.length; j++) {
              costs[j] = -costs[j];
            }
            return new OjAlgoSimplex()
                .find(
                    new Table(
                        scaled.rows,
                        scaled.rowLow,
                        scaled.rowHigh,
                        scaled.low,
                        scaled.high,
                        costs));
          };
      String why = why(new StandardSolver(List.of(dearest)), program);
      assertTrue(why.matches("(the cost is|a price of) .*"), why);
    }
  }

  /** Prices are found again from the values, so nothing is lost. */
  @Test
  void pricesThatAreMissingOrWrong() {
    Programs programs = new Programs(31);
    for (int number = 0; number < PROGRAMS; number++) {
      LinearProgram program = programs.feasible();
      Optimum right = Solver.standard().solve(program).optimum().orElseThrow();
      Solver none =
          erring(found -> new Simplex.Found(found.state(), found.values(), new double[0]));
      Solver turned =
          erring(
              found -> {
                double[] prices = found.prices().clone();
                for (int i = 0; i < prices.length; i++) {
                  prices[i] = -prices[i];
                }
                return new Simplex.Found(found.state(), found.values(), prices);
              });
      for (Solver solver : List.of(none, turned)) {
        Optimum optimum = solver.solve(program).optimum().orElseThrow();
        assertEquals(right.cost(), optimum.cost(), 1e-12 * right.cost());
        assertTrue(optimum.gap() <= 1e-9);
        for (int i = 0; i < program.constraints().size(); i++) {
          double size = Math.abs(right.price(i));
          assertEquals(right.price(i), optimum.price(i), 1e-8 * size + 1e-12, "price " + i);
        }
      }
    }
  }

  @Test
  void nothingWhereThereIsSomething() {
    LinearProgram program = new Programs(32).feasible();
    Simplex right = new OjAlgoSimplex();
    Simplex first =
        scaled ->
            scaled.variables == program.variables().size()
                ? Simplex.Found.none(Simplex.State.INFEASIBLE)
                : right.find(scaled);
    assertEquals(
        "the solver finds nothing that keeps all bounds, and there is",
        why(new StandardSolver(List.of(first)), program));
    assertEquals("optimum", why(new StandardSolver(List.of(first, right)), program));
  }

  @Test
  void noEndWhereThereIsOne() {
    LinearProgram program = new Programs(33).feasible();
    boolean[] asked = {false};
    Simplex right = new OjAlgoSimplex();
    Simplex first =
        scaled -> {
          boolean isFirst = !asked[0];
          asked[0] = true;
          return isFirst ? Simplex.Found.none(Simplex.State.UNBOUNDED) : right.find(scaled);
        };
    assertEquals(
        "the solver finds that the cost falls without end, and it does not",
        why(new StandardSolver(List.of(first)), program));
  }

  @Test
  void noAnswerAtAll() {
    assertEquals(
        "the solver gives no answer",
        why(erring(found -> Simplex.Found.none(Simplex.State.NONE)), new Programs(34).feasible()));
  }
}
