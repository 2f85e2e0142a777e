package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.Conflict;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Member;
import dev.pellucid.engine.linear.Side;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Variable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Parts of a task that contradict each other: no shares keep them, and some keep all but any one of
 * them. That is shown by the optimiser, for the set and for each that is left out of it; where it
 * does not decide, the rest is taken to be possible.
 *
 * <p>There are often several such sets. Where what is never loosened contradicts itself, the set is
 * of that alone: nothing else would help. Otherwise parts are left out in the order of their {@link
 * Ease} while the rest still contradicts itself, so that those stay that are loosened most readily.
 */
public final class Contradicting {
  private final Task task;
  private final Solver solver;
  private final Function<Part, Ease> ease;

  private Contradicting(Task task, Solver solver, Function<Part, Ease> ease) {
    this.task = task.aiming(Aim.CHANGE);
    this.solver = solver;
    this.ease = ease;
  }

  /** Empty where it is not shown that no shares keep all. */
  public static Optional<List<Part>> of(Task task, Solver solver, Function<Part, Ease> ease) {
    return new Contradicting(task, solver, ease).found();
  }

  /**
   * Whether parts that contradict each other do so only because all shares together are what they
   * are.
   */
  public static boolean needsTotal(Task task, List<Part> parts, Solver solver) {
    Answer answer = new Optimiser(solver).solve(Part.only(task, parts).aiming(Aim.CHANGE));
    return answer.byKind(
        found -> false,
        none -> {
          int total = none.rows().size();
          Constraint any =
              none.program()
                  .constraints()
                  .get(total)
                  .between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
          return solver.solve(none.program().withConstraint(total, any)).optimum().isPresent();
        },
        undecided -> false);
  }

  private Optional<List<Part>> found() {
    List<Part> all = new ArrayList<>();
    List<Part> never = new ArrayList<>();
    for (Ease one : Ease.values()) {
      for (Part part : Part.of(task)) {
        if (ease.apply(part) == one) {
          all.add(part);
          if (one == Ease.NEVER) {
            never.add(part);
          }
        }
      }
    }
    return few(unmet(never).isPresent() ? never : all);
  }

  /** The fewest that still contradict each other, in the order of the task. */
  private Optional<List<Part>> few(List<Part> inOrder) {
    List<Part> left = inOrder;
    Optional<List<Part>> candidates = candidates(inOrder);
    if (candidates.isPresent() && unmet(candidates.get()).isPresent()) {
      left = candidates.get();
    } else if (unmet(inOrder).isEmpty()) {
      return Optional.empty();
    }
    for (Part part : left) {
      List<Part> without = new ArrayList<>(left);
      without.remove(part);
      if (unmet(without).isPresent()) {
        left = without;
      }
    }
    List<Part> told = new ArrayList<>(Part.of(task));
    told.retainAll(left);
    return Optional.of(told);
  }

  /** The program that shows that nothing keeps these. */
  private Optional<LinearProgram> unmet(List<Part> parts) {
    Answer answer = new Optimiser(solver).solve(Part.only(task, parts));
    return answer.byKind(
        found -> Optional.empty(), none -> Optional.of(none.program()), un -> Optional.empty());
  }

  /**
   * Those that contradict each other in the program that was solved last, which is soon found: its
   * planes are no narrower than what is judged. Empty where whole steps are to be chosen.
   */
  private Optional<List<Part>> candidates(List<Part> inOrder) {
    Answer answer = new Optimiser(solver).solve(Part.only(task, inOrder));
    return answer.byKind(
        found -> Optional.empty(), none -> candidates(none, inOrder), un -> Optional.empty());
  }

  private Optional<List<Part>> candidates(Answer.Unmet unmet, List<Part> inOrder) {
    if (unmet.program().isInteger()) {
      return Optional.empty();
    }
    List<Constraint> constraints = new ArrayList<>(unmet.program().constraints());
    int moves = constraints.size() - 1;
    List<Member> order = new ArrayList<>();
    List<List<Member>> ofParts = new ArrayList<>();
    for (Part part : inOrder) {
      List<Member> members =
          part.byKind(
              kept -> planes(kept.of().of(), unmet),
              least -> List.of(row(least.index(), Side.LOW, least.points(), unmet, constraints)),
              most -> List.of(row(most.index(), Side.HIGH, most.points(), unmet, constraints)),
              all -> List.of(Member.constraint(moves, Side.HIGH)));
      order.addAll(members);
      ofParts.add(members);
    }
    LinearProgram program = new LinearProgram(between(unmet.program()), constraints);
    return Conflict.of(program, solver, order).map(conflict -> parts(inOrder, ofParts, conflict));
  }

  /** An end of a line as a row of its own: without it, its share is still not below zero. */
  private static Member row(
      int line, Side side, double bound, Answer.Unmet unmet, List<Constraint> constraints) {
    double[] row = new double[unmet.program().variables().size()];
    row[line] = 1;
    constraints.add(
        side.isLow()
            ? Constraint.of(row, bound, Double.POSITIVE_INFINITY)
            : Constraint.of(row, Double.NEGATIVE_INFINITY, bound));
    return Member.constraint(constraints.size() - 1, side);
  }

  private List<Variable> between(LinearProgram program) {
    List<Variable> variables = new ArrayList<>();
    for (int i = 0; i < program.variables().size(); i++) {
      double floor = i < task.free().size() ? task.free().get(i).floor() : 0;
      variables.add(Variable.of(floor, Free.ALL, 0));
    }
    return variables;
  }

  private static List<Member> planes(Requirement one, Answer.Unmet unmet) {
    List<Member> planes = new ArrayList<>();
    for (int i = 0; i < unmet.rows().size(); i++) {
      if (unmet.rows().get(i).equals(one)) {
        planes.add(Member.constraint(i, Side.LOW));
      }
    }
    return planes;
  }

  private static List<Part> parts(
      List<Part> inOrder, List<List<Member>> ofParts, Conflict conflict) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); i++) {
      if (ofParts.get(i).stream().anyMatch(conflict.members()::contains)) {
        parts.add(inOrder.get(i));
      }
    }
    return parts;
  }
}
