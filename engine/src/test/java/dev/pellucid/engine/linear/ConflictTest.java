package dev.pellucid.engine.linear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ConflictTest {
  private static final int INFEASIBLE = 200;
  private static final double NONE = Double.NEGATIVE_INFINITY;
  private static final double ANY = Double.POSITIVE_INFINITY;
  private static final Solver SOLVER = Solver.standard();

  @Test
  void nothingMeetsItAndWithoutAnyOneOfItTheRestIsMet() {
    Programs programs = new Programs(18);
    int members = 0;
    for (int number = 0; number < INFEASIBLE; number++) {
      LinearProgram program = programs.infeasible();
      assertTrue(SecondSolver.least(program).isEmpty(), "program " + number);
      Conflict conflict = Conflict.of(program, SOLVER).orElseThrow();
      isIrreducible(program, conflict, "program " + number);
      members += conflict.members().size();
    }
    assertTrue(members > 3 * INFEASIBLE, members + " members");
  }

  /** Both solvers say so, of the program of the members alone. */
  private static void isIrreducible(LinearProgram program, Conflict conflict, String which) {
    LinearProgram alone = alone(program, new HashSet<>(conflict.members()));
    assertTrue(SOLVER.solve(alone).isInfeasible(), which);
    assertTrue(SecondSolver.least(alone).isEmpty(), which);
    for (Member member : conflict.members()) {
      LinearProgram rest = member.droppedFrom(alone).withCosts(new double[size(program)]);
      assertTrue(SOLVER.solve(rest).optimum().isPresent(), () -> which + " without " + member);
      assertTrue(SecondSolver.least(rest).isPresent(), () -> which + " without " + member);
    }
  }

  private static LinearProgram alone(LinearProgram program, Set<Member> members) {
    LinearProgram alone = program;
    for (Member member : Member.of(program)) {
      alone = members.contains(member) ? alone : member.droppedFrom(alone);
    }
    return alone;
  }

  private static int size(LinearProgram program) {
    return program.variables().size();
  }

  @Test
  void whatIsDroppedFirstDoesNotRemain() {
    Programs programs = new Programs(19);
    int other = 0;
    for (int number = 0; number < 30; number++) {
      LinearProgram program = programs.infeasible();
      List<Member> order = Member.of(program);
      Conflict conflict = Conflict.of(program, SOLVER, order).orElseThrow();
      List<Member> turned = new ArrayList<>(order);
      Collections.reverse(turned);
      Conflict last = Conflict.of(program, SOLVER, turned).orElseThrow();
      isIrreducible(program, last, "program " + number);
      other += conflict.equals(last) ? 0 : 1;
    }
    assertTrue(other > 5, other + " differ");
  }

  /** x is at least 3 by two bounds, at most 2 by two others: the order says which two are told. */
  @Test
  void theCallerSaysWhichOfSeveralRemain() {
    double[] one = {1};
    LinearProgram program =
        new LinearProgram(
            List.of(Variable.of(0, 2, 1)),
            List.of(
                Constraint.of(one, 3, ANY),
                Constraint.of(one, 4, ANY),
                Constraint.of(one, NONE, 1)));
    Member three = Member.constraint(0, Side.LOW);
    Member four = Member.constraint(1, Side.LOW);
    Member most = Member.constraint(2, Side.HIGH);
    Member bound = Member.variable(0, Side.HIGH);
    assertEquals(told(four, bound), Conflict.of(program, SOLVER, List.of(most, three)));
    assertEquals(told(three, most), Conflict.of(program, SOLVER, List.of(bound, four)));
    assertEquals(told(four, most), Conflict.of(program, SOLVER, List.of(bound, three)));
    assertEquals(told(four, bound), Conflict.of(program, SOLVER));
  }

  private static Optional<Conflict> told(Member... members) {
    return Optional.of(new Conflict(List.of(members)));
  }

  @Test
  void aLowAboveItsHighContradictsItself() {
    LinearProgram variable =
        new LinearProgram(List.of(Variable.of(0, 9, 1), Variable.of(5, 4, 1)), List.of());
    assertEquals(
        told(Member.variable(1, Side.LOW), Member.variable(1, Side.HIGH)),
        Conflict.of(variable, SOLVER));
    LinearProgram constraint =
        new LinearProgram(
            List.of(Variable.of(0, 9, 1)), List.of(Constraint.of(new double[] {1}, 5, 4)));
    assertEquals(
        told(Member.constraint(0, Side.LOW), Member.constraint(0, Side.HIGH)),
        Conflict.of(constraint, SOLVER));
  }

  /** A sum without a part is zero, whatever the variables are. */
  @Test
  void anEmptySumThatShallBeSomethingContradictsItself() {
    LinearProgram program =
        new LinearProgram(
            List.of(Variable.of(0, 9, 1)), List.of(Constraint.of(new double[] {0}, 5, 6)));
    assertTrue(SOLVER.solve(program).isInfeasible());
    assertEquals(told(Member.constraint(0, Side.LOW)), Conflict.of(program, SOLVER));
  }

  @Test
  void whatCanBeMetHasNone() {
    assertEquals(Optional.empty(), Conflict.of(new Programs(1).feasible(), SOLVER));
  }

  /** Each by itself can be met by whole multiples of 4, and all amounts meet both. */
  @Test
  void wholeMultiplesContradictWhatAmountsMeet() {
    LinearProgram program =
        new LinearProgram(
            List.of(new Variable(0, 20, 1, false, 4), new Variable(0, 20, 1, false, 4)),
            List.of(
                Constraint.of(new double[] {1, 1}, 9, ANY),
                Constraint.of(new double[] {1, 1}, NONE, 11),
                Constraint.of(new double[] {1, 0}, 1, ANY)));
    assertTrue(SOLVER.solve(program).isInfeasible());
    assertEquals(
        told(Member.constraint(0, Side.LOW), Member.constraint(1, Side.HIGH)),
        Conflict.of(program, SOLVER));
  }
}
