package dev.pellucid.engine.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Programs that are small enough to be solved in the head, and answers that are wrong. */
class StandardSolverTest {
  private static final double NONE = Double.NEGATIVE_INFINITY;
  private static final double ANY = Double.POSITIVE_INFINITY;

  private static Optimum optimum(LinearProgram program) {
    return Solver.standard().solve(program).optimum().orElseThrow();
  }

  private static LinearProgram program(List<Variable> variables, Constraint... constraints) {
    return new LinearProgram(variables, List.of(constraints));
  }

  private static Constraint row(double low, double high, double... coefficients) {
    return Constraint.of(coefficients, low, high);
  }

  /** One more of the total costs 1, one more of the content a half. */
  @Test
  void pricesHaveTheSignOfWhatOneMoreCosts() {
    List<Variable> variables = List.of(Variable.of(0, ANY, 3), Variable.of(0, ANY, 2));
    Optimum least = optimum(program(variables, row(10, 10, 1, 1), row(24, ANY, 4, 2)));
    assertArrayEquals(new double[] {2, 8}, least.values(), 1e-12);
    assertArrayEquals(new double[] {1, 0.5}, least.prices(), 1e-12);
    assertEquals(22, least.cost(), 1e-12);
    Optimum most =
        optimum(program(variables, row(10, 10, 1, 1), row(NONE, 24, -4, -2), row(NONE, 7, 0, 1)));
    assertArrayEquals(new double[] {3, 7}, most.values(), 1e-12);
    assertArrayEquals(new double[] {3, 0, -1}, most.prices(), 1e-12);
  }

  /** A constraint on one variable alone keeps its price, and a bound of a variable has one. */
  @Test
  void boundsOfVariablesHavePrices() {
    List<Variable> variables =
        List.of(Variable.of(1, ANY, 5), Variable.of(0, 6, 2), Variable.of(0, ANY, 3));
    Optimum optimum = optimum(program(variables, row(10, 10, 1, 1, 1), row(NONE, 5, 0, 1, 0)));
    assertArrayEquals(new double[] {1, 5, 4}, optimum.values());
    assertArrayEquals(new double[] {3, -1}, optimum.prices());
    assertArrayEquals(new double[] {2, 0, 0}, optimum.boundPrices());
  }

  @Test
  void noConstraints() {
    Optimum optimum =
        optimum(
            program(List.of(Variable.of(1, 7, 2), Variable.of(-3, 4, -1), Variable.of(2, 5, 0))));
    assertArrayEquals(new double[] {1, 4, 2}, optimum.values());
    assertArrayEquals(new double[] {2, -1, 0}, optimum.boundPrices());
    assertEquals(-2, optimum.cost());
  }

  @Test
  void oneVariable() {
    Optimum optimum = optimum(program(List.of(Variable.of(0, 9, 2)), row(3, ANY, 0.5)));
    assertEquals(6, optimum.value(0));
    assertEquals(4, optimum.price(0));
    assertEquals(0, optimum.gap());
  }

  @Test
  void fixedVariables() {
    List<Variable> variables =
        List.of(Variable.of(4, 4, 9), Variable.of(0, ANY, 1), Variable.of(-2, -2, 1));
    Optimum optimum = optimum(program(variables, row(10, 10, 1, 1, 1)));
    assertArrayEquals(new double[] {4, 8, -2}, optimum.values());
    assertArrayEquals(new double[] {8, 0, 0}, optimum.boundPrices());
    List<Variable> all = List.of(Variable.of(4, 4, 9), Variable.of(6, 6, 1));
    assertEquals(42, optimum(program(all, row(10, 10, 1, 1))).cost());
    assertTrue(Solver.standard().solve(program(all, row(11, 11, 1, 1))).isInfeasible());
  }

  @Test
  void emptyRows() {
    List<Variable> variables = List.of(Variable.of(2, 9, 1), Variable.of(0, 9, 1));
    Optimum optimum =
        optimum(program(variables, row(-1, 1, 0, 0), row(NONE, ANY, 1, 1), row(0, 0, 0, 0)));
    assertArrayEquals(new double[] {2, 0}, optimum.values());
    assertArrayEquals(new double[] {0, 0, 0}, optimum.prices());
    assertTrue(Solver.standard().solve(program(variables, row(1, 2, 0, 0))).isInfeasible());
  }

  @Test
  void withoutBounds() {
    List<Variable> variables = List.of(Variable.of(NONE, ANY, 1), Variable.of(NONE, 5, -1));
    Optimum optimum = optimum(program(variables, row(-7, ANY, 1, 1), row(-20, ANY, 1, 0)));
    assertArrayEquals(new double[] {-12, 5}, optimum.values());
  }

  @Test
  void costsThatFallWithoutEnd() {
    List<Variable> variables = List.of(Variable.of(0, ANY, -1), Variable.of(0, ANY, 1));
    assertEquals(new Unbounded(), Solver.standard().solve(program(variables, row(NONE, 3, 1, -2))));
    assertEquals(
        new Infeasible(),
        Solver.standard().solve(program(variables, row(NONE, 3, 1, -2), row(NONE, -1, 1, 1))));
  }

  /** What comes first is taken, whichever way the library went. */
  @Test
  void tiesAreBrokenByOrder() {
    List<Variable> variables =
        List.of(
            Variable.of(0, 30, 2),
            Variable.of(0, 30, 2),
            Variable.of(0, 30, 2),
            Variable.of(0, 60, 2));
    Optimum optimum =
        optimum(program(variables, row(100, 100, 1, 1, 1, 1), row(5, ANY, 1, 1, 1, 1)));
    assertArrayEquals(new double[] {30, 30, 30, 10}, optimum.values());
    assertEquals(200, optimum.cost());
    assertEquals(2, optimum.price(0));
  }

  @Test
  void smallAndGreatContentsAreHeldAlike() {
    List<Variable> variables = List.of(Variable.of(0, ANY, 1), Variable.of(0, ANY, 300));
    Optimum optimum =
        optimum(
            program(
                variables,
                row(100, 100, 1, 1),
                row(2.5e-7, ANY, 0, 1e-7),
                row(NONE, 5000, 10, 100)));
    assertArrayEquals(new double[] {97.5, 2.5}, optimum.values(), 1e-12);
    assertEquals(2.99e9, optimum.price(1), 1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberIsRefused(double bad) {
    double[] row = {bad};
    assertThrows(IllegalArgumentException.class, () -> Constraint.of(row, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Variable.of(0, 1, bad));
    assertThrows(IllegalArgumentException.class, () -> new Variable(0, 1, 1, false, bad));
  }

  @Test
  void whatIsNoProgramIsRefused() {
    double[] row = {1};
    List<Variable> two = List.of(Variable.of(0, 1, 1), Variable.of(0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> Constraint.of(row, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> Constraint.of(row, ANY, ANY));
    assertThrows(IllegalArgumentException.class, () -> Variable.of(0, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> Variable.of(NONE, NONE, 1));
    assertThrows(IllegalArgumentException.class, () -> new Variable(0, 1, 1, false, -1));
    assertThrows(IllegalArgumentException.class, () -> program(List.of()));
    assertThrows(IllegalArgumentException.class, () -> program(two, row(0, 1, 1)));
  }

  @Test
  void whatIsGivenAndTakenIsACopy() {
    double[] coefficients = {1, 1};
    Constraint constraint = Constraint.of(coefficients, 10, 10);
    coefficients[0] = 7;
    constraint.coefficients()[1] = 7;
    Optimum optimum =
        optimum(program(List.of(Variable.of(0, ANY, 1), Variable.of(0, ANY, 2)), constraint));
    optimum.values()[0] = 3;
    optimum.prices()[0] = 3;
    assertEquals(10, optimum.value(0));
    assertEquals(1, optimum.price(0));
  }
}
