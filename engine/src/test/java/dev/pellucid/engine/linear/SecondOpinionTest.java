package dev.pellucid.engine.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Random programs by both libraries. Ours also proves; the other is only held against it. */
class SecondOpinionTest {
  private static final int FEASIBLE = 500;
  private static final int DEGENERATE = 3000;

  @Test
  void theLeastCostIsThatOfASecondSolver() {
    Programs programs = new Programs(16);
    for (int number = 0; number < FEASIBLE; number++) {
      LinearProgram program = programs.feasible();
      Optimum optimum = Solver.standard().solve(program).optimum().orElseThrow();
      double second = SecondSolver.least(program).orElseThrow();
      assertEquals(second, optimum.cost(), 1e-6 * Math.abs(second), "program " + number);
      assertTrue(optimum.gap() <= 1e-9, "program " + number + " has a gap of " + optimum.gap());
      assertEquals(program.cost(optimum.values()), optimum.cost(), 1e-12 * optimum.cost());
      assertFalse(optimum.isInteger());
      pricesAreOfWhatBinds(program, optimum, "program " + number);
    }
  }

  private static void pricesAreOfWhatBinds(LinearProgram program, Optimum optimum, String which) {
    for (int i = 0; i < program.constraints().size(); i++) {
      Constraint constraint = program.constraints().get(i);
      double price = optimum.price(i);
      if (price != 0) {
        double bound = price > 0 ? constraint.low() : constraint.high();
        double at = constraint.at(optimum.values());
        assertEquals(bound, at, 1e-9 * Math.abs(bound) + 1e-13, which + " constraint " + i);
      }
    }
    for (int j = 0; j < program.variables().size(); j++) {
      Variable variable = program.variables().get(j);
      double price = optimum.boundPrice(j);
      if (price != 0) {
        double bound = price > 0 ? variable.low() : variable.high();
        assertEquals(bound, optimum.value(j), which + " variable " + j);
      }
    }
  }

  /**
   * The other may be wrong where ours is proven to be less, and is in a few of a hundred thousand.
   */
  @Test
  void whatMeetsInOnePointIsSolvedAsWell() {
    Programs programs = new Programs(17);
    int solved = 0;
    int endless = 0;
    for (int number = 0; number < DEGENERATE; number++) {
      LinearProgram program = programs.degenerate();
      Outcome outcome = Solver.standard().solve(program);
      String which = "program " + number;
      OptionalDouble second = SecondSolver.least(program);
      double least =
          outcome.byKind(
              Optimum::cost,
              none -> Double.POSITIVE_INFINITY,
              falls -> Double.NEGATIVE_INFINITY,
              failed -> Double.NaN);
      assertFalse(Double.isNaN(least), which);
      assertEquals(second.orElse(Double.POSITIVE_INFINITY), least, 1e-9, which);
      solved += Double.isFinite(least) ? 1 : 0;
      endless += least == Double.NEGATIVE_INFINITY ? 1 : 0;
    }
    assertTrue(solved > 500 && endless > 200, solved + " solved, " + endless + " endless");
  }

  @Test
  void theSameProgramHasTheSameAnswerToTheLastBit() {
    for (int number = 0; number < 20; number++) {
      Optimum once =
          Solver.standard().solve(new Programs(number).feasible()).optimum().orElseThrow();
      Optimum again =
          Solver.standard().solve(new Programs(number).feasible()).optimum().orElseThrow();
      assertArrayEquals(once.values(), again.values());
      assertArrayEquals(once.prices(), again.prices());
      assertArrayEquals(once.boundPrices(), again.boundPrices());
      assertEquals(once.cost(), again.cost());
      assertEquals(once.gap(), again.gap());
    }
  }
}
