package dev.pellucid.engine.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What may be chosen, held against a trial of all that there is to choose from. */
class ChoicesTest {
  private static final int TRIALS = 60;
  private static final double ANY = Double.POSITIVE_INFINITY;
  private static final double[] STEPS = {0.5, 1, 2.5, 5};
  private static final Solver SOLVER = Solver.standard();

  @Test
  void nothingThatCouldBeChosenCostsLess() {
    Random random = new Random(26);
    int met = 0;
    int dearer = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      LinearProgram program = chosen(random, new Programs(trial).feasible(7, 5), 3, 2);
      double least = least(program, 0);
      Outcome outcome = SOLVER.solve(program);
      if (Double.isInfinite(least)) {
        assertTrue(outcome.isInfeasible(), "trial " + trial);
        continue;
      }
      met++;
      Optimum optimum = outcome.optimum().orElseThrow();
      assertEquals(least, optimum.cost(), 1e-9 * least, "trial " + trial);
      isOfChoices(program, optimum);
      double relaxed = SOLVER.solve(program.relaxed()).optimum().orElseThrow().cost();
      dearer += optimum.cost() > relaxed * (1 + 1e-6) ? 1 : 0;
    }
    assertTrue(met > 20 && met < TRIALS, met + " met");
    assertTrue(dearer > 10, dearer + " dearer than without choices");
  }

  private static void isOfChoices(LinearProgram program, Optimum optimum) {
    assertTrue(optimum.isInteger());
    assertTrue(optimum.gap() <= 1e-9);
    for (int j = 0; j < program.variables().size(); j++) {
      Variable variable = program.variables().get(j);
      double value = optimum.value(j);
      boolean isZero = variable.orZero() && value == 0;
      assertTrue(isZero || value >= variable.low() && value <= variable.high());
      if (variable.step() > 0) {
        assertEquals(Math.rint(value / variable.step()) * variable.step(), value);
      }
    }
  }

  /** Some that are from 2 up or nothing, some in whole steps, of a total that leaves room. */
  private static LinearProgram chosen(Random random, LinearProgram program, int orZero, int steps) {
    List<Variable> variables = new ArrayList<>();
    for (int j = 0; j < program.variables().size(); j++) {
      double cost = program.variables().get(j).cost();
      if (j < orZero) {
        double low = 2 + random.nextInt(20);
        variables.add(new Variable(low, low + random.nextInt(60), cost, true, 0));
      } else if (j < orZero + steps) {
        double step = STEPS[random.nextInt(STEPS.length)];
        variables.add(new Variable(3, 3 + 5 * step, cost, random.nextBoolean(), step));
      } else {
        variables.add(Variable.of(0, 100, cost));
      }
    }
    List<Constraint> constraints = new ArrayList<>();
    for (Constraint constraint : program.constraints()) {
      boolean isTotal = constraint.low() == constraint.high();
      constraints.add(
          isTotal
              ? constraint
              : constraint.between(0.8 * constraint.low(), 1.2 * constraint.high()));
    }
    return new LinearProgram(variables, constraints);
  }

  /** Of all choices from this variable on. */
  private static double least(LinearProgram program, int from) {
    if (from == program.variables().size()) {
      return SOLVER.solve(program).optimum().map(Optimum::cost).orElse(ANY);
    }
    Variable variable = program.variables().get(from);
    if (!variable.isChosen()) {
      return least(program, from + 1);
    }
    double least = ANY;
    if (variable.orZero()) {
      least = least(fixed(program, from, 0, 0), from + 1);
    }
    if (variable.step() == 0) {
      LinearProgram some = fixed(program, from, variable.low(), variable.high());
      return Math.min(least, least(some, from + 1));
    }
    for (double k = Math.ceil(variable.low() / variable.step());
        k * variable.step() <= variable.high();
        k++) {
      double value = k * variable.step();
      least = Math.min(least, least(fixed(program, from, value, value), from + 1));
    }
    return least;
  }

  private static LinearProgram fixed(LinearProgram program, int j, double low, double high) {
    return program.withVariable(j, Variable.of(low, high, program.variables().get(j).cost()));
  }

  @Test
  void thirtyOfNothingOrSomeAndTenInStepsAreChosenInTime() {
    Random random = new Random(27);
    for (int trial = 0; trial < 10; trial++) {
      LinearProgram program = chosen(random, new Programs(trial).feasible(60, 40), 30, 10);
      Choices choices = new Choices(program, SOLVER, 20_000);
      Optimum optimum = choices.search().optimum().orElseThrow();
      isOfChoices(program, optimum);
      assertTrue(choices.parts() < 2000, choices.parts() + " parts");
      assertArrayEquals(optimum.values(), SOLVER.solve(program).optimum().orElseThrow().values());
    }
  }

  /**
   * At least 2 of the cheap one or none: 1.5 are needed, so 2 of it cost less than 1.5 of the
   * other.
   */
  @Test
  void nothingOrSome() {
    LinearProgram program =
        new LinearProgram(
            List.of(new Variable(2, 9, 1, true, 0), Variable.of(0, 9, 1.5)),
            List.of(Constraint.of(new double[] {1, 1}, 1.5, ANY)));
    Optimum optimum = SOLVER.solve(program).optimum().orElseThrow();
    assertArrayEquals(new double[] {2, 0}, optimum.values());
    assertEquals(1, optimum.boundPrice(0));
    Optimum dearer =
        SOLVER
            .solve(program.withVariable(0, new Variable(2, 9, 1.2, true, 0)))
            .optimum()
            .orElseThrow();
    assertArrayEquals(new double[] {0, 1.5}, dearer.values());
    assertTrue(dearer.isInteger());
  }

  @Test
  void orNothingIsNoChoiceWhereNothingIsWithinTheBounds() {
    LinearProgram program =
        new LinearProgram(
            List.of(new Variable(0, 9, 1, true, 0)),
            List.of(Constraint.of(new double[] {1}, 1.5, ANY)));
    assertFalse(SOLVER.solve(program).optimum().orElseThrow().isInteger());
  }

  @Test
  void whatIsNotSettledIsToldAsFailed() {
    LinearProgram program = chosen(new Random(4), new Programs(4).feasible(45, 40), 30, 10);
    Outcome outcome = new Choices(program, SOLVER, 3).search();
    assertEquals(
        "after 3 trials it is not settled what to choose",
        outcome.byKind(o -> "", n -> "", u -> "", Failed::why));
  }
}
