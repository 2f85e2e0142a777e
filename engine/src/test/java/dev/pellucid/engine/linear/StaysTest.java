package dev.pellucid.engine.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ranges in which an answer stays, each solved again just inside and just outside. */
class StaysTest {
  private static final int TRIALS = 200;
  private static final double ANY = Double.POSITIVE_INFINITY;
  private static final Solver SOLVER = Solver.standard();

  @Test
  void valuesStayInsideAndNotOutside() {
    Programs programs = new Programs(20);
    Random random = new Random(21);
    int ends = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      LinearProgram program = programs.feasible(5 + random.nextInt(26), 3 + random.nextInt(20));
      Optimum optimum = SOLVER.solve(program).optimum().orElseThrow();
      double[] direction = new double[program.variables().size()];
      int dearer = random.nextInt(direction.length);
      direction[dearer] = 1;
      if (trial % 2 == 0) {
        direction[random.nextInt(direction.length)] -= random.nextDouble();
      }
      Stays stays = Stays.along(program, optimum, direction).orElseThrow();
      for (double end : new double[] {stays.from(), stays.to()}) {
        if (Double.isFinite(end)) {
          ends++;
          double nudge = 1e-4 * Math.max(Math.abs(end), 1e-3) * (end == stays.to() ? 1 : -1);
          assertTrue(costsNoMore(program, optimum, direction, end - nudge), "trial " + trial);
          assertTrue(!costsNoMore(program, optimum, direction, end + nudge), "trial " + trial);
        }
      }
    }
    assertTrue(ends > TRIALS, ends + " ends");
  }

  /** Whether the values still cost no more than what is best at these costs. */
  private static boolean costsNoMore(
      LinearProgram program, Optimum optimum, double[] direction, double by) {
    double[] costs = new double[direction.length];
    for (int j = 0; j < costs.length; j++) {
      costs[j] = program.variables().get(j).cost() + by * direction[j];
    }
    LinearProgram moved = program.withCosts(costs);
    double best = SOLVER.solve(moved).optimum().orElseThrow().cost();
    return moved.cost(optimum.values()) <= best + 1e-12 * Math.abs(best);
  }

  /** Three bounds meet in one point of the plane, where two would do. */
  @Test
  void staysAreExactWhereMoreBindsThanNeedsTo() {
    LinearProgram program =
        new LinearProgram(
            List.of(Variable.of(0, ANY, 1), Variable.of(0, ANY, 1)),
            List.of(
                Constraint.of(new double[] {2, 1}, 3, ANY),
                Constraint.of(new double[] {1, 1}, 2, ANY),
                Constraint.of(new double[] {1, 2}, 3, ANY)));
    Optimum optimum = SOLVER.solve(program).optimum().orElseThrow();
    assertArrayEquals(new double[] {1, 1}, optimum.values(), 1e-12);
    Stays stays = Stays.along(program, optimum, new double[] {1, 0}).orElseThrow();
    assertEquals(-0.5, stays.from(), 1e-12);
    assertEquals(1, stays.to(), 1e-12);
  }

  @Test
  void pricesStayInsideAndNotOutside() {
    Programs programs = new Programs(22);
    Random random = new Random(23);
    int ends = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      LinearProgram program = programs.feasible(5 + random.nextInt(26), 3 + random.nextInt(20));
      Optimum optimum = SOLVER.solve(program).optimum().orElseThrow();
      int constraint = binding(optimum, random.nextInt(program.constraints().size()));
      Side side = optimum.price(constraint) < 0 ? Side.HIGH : Side.LOW;
      Optional<PriceStays> found = PriceStays.of(program, SOLVER, constraint, side);
      if (found.isEmpty()) {
        continue;
      }
      PriceStays stays = found.get();
      double bound = Member.constraint(constraint, side).bound(program);
      assertTrue(stays.from() <= bound && bound <= stays.to(), "trial " + trial);
      for (double end : new double[] {stays.from(), stays.to()}) {
        if (Double.isFinite(end)) {
          ends++;
          int way = end == stays.to() ? 1 : -1;
          double beyond = 1e-4 * Math.max(Math.max(Math.abs(end), Math.abs(bound)), 1e-6) * way;
          double within = Math.min(Math.abs(beyond), (stays.to() - stays.from()) / 3) * way;
          String which = "trial " + trial + " at " + end + " of " + stays;
          assertTrue(costs(program, constraint, side, end - within, stays.price()), which);
          assertTrue(!costs(program, constraint, side, end + beyond, stays.price()), which);
        }
      }
    }
    assertTrue(ends > TRIALS, ends + " ends");
  }

  private static int binding(Optimum optimum, int from) {
    double[] prices = optimum.prices();
    for (int i = 0; i < prices.length; i++) {
      if (prices[(from + i) % prices.length] != 0) {
        return (from + i) % prices.length;
      }
    }
    return from;
  }

  private static boolean costs(
      LinearProgram program, int index, Side side, double bound, double price) {
    Constraint constraint = program.constraints().get(index);
    LinearProgram moved =
        constraint.low() == constraint.high()
            ? program.withConstraint(index, constraint.between(bound, bound))
            : Member.constraint(index, side).at(program, bound);
    Optional<Optimum> optimum = SOLVER.solve(moved).optimum();
    return optimum.isPresent()
        && Math.abs(optimum.get().price(index) - price) <= 1e-7 * Math.abs(price);
  }

  /** At the price of a bound, one more of it costs so much. */
  @Test
  void aPriceIsWhatOneMoreCosts() {
    Programs programs = new Programs(24);
    for (int trial = 0; trial < 50; trial++) {
      LinearProgram program = programs.feasible(20, 15);
      Optimum optimum = SOLVER.solve(program).optimum().orElseThrow();
      int constraint = binding(optimum, 0);
      Side side = optimum.price(constraint) < 0 ? Side.HIGH : Side.LOW;
      PriceStays stays = PriceStays.of(program, SOLVER, constraint, side).orElseThrow();
      double bound = Member.constraint(constraint, side).bound(program);
      double to = Math.min(stays.to(), bound * 1.05);
      Constraint changed = program.constraints().get(constraint);
      LinearProgram moved =
          changed.low() == changed.high()
              ? program.withConstraint(constraint, changed.between(to, to))
              : Member.constraint(constraint, side).at(program, to);
      double cost = SOLVER.solve(moved).optimum().orElseThrow().cost();
      assertEquals(
          optimum.cost() + optimum.price(constraint) * (to - bound), cost, 1e-9 * cost, "" + trial);
    }
  }

  @Test
  void anInfiniteBoundHasNoPrice() {
    LinearProgram program =
        new LinearProgram(
            List.of(Variable.of(0, ANY, 1)), List.of(Constraint.of(new double[] {1}, 3, ANY)));
    assertEquals(Optional.empty(), PriceStays.of(program, SOLVER, 0, Side.HIGH));
    PriceStays stays = PriceStays.of(program, SOLVER, 0, Side.LOW).orElseThrow();
    assertEquals(new PriceStays(0, ANY, 1), stays);
  }
}
