package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.List;

/**
 * One bound of a program: of a constraint or of a variable.
 *
 * @param index of the constraint or of the variable
 */
public record Member(boolean isVariable, int index, Side side) {
  public static Member constraint(int index, Side side) {
    return new Member(false, index, side);
  }

  public static Member variable(int index, Side side) {
    return new Member(true, index, side);
  }

  /** All bounds of a program that are finite: those of constraints first, each low first. */
  public static List<Member> of(LinearProgram program) {
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < program.constraints().size(); i++) {
      Constraint constraint = program.constraints().get(i);
      add(members, false, i, constraint.low(), constraint.high());
    }
    for (int j = 0; j < program.variables().size(); j++) {
      Variable variable = program.variables().get(j);
      add(members, true, j, variable.low(), variable.high());
    }
    return members;
  }

  private static void add(
      List<Member> members, boolean isVariable, int index, double low, double high) {
    if (Double.isFinite(low)) {
      members.add(new Member(isVariable, index, Side.LOW));
    }
    if (Double.isFinite(high)) {
      members.add(new Member(isVariable, index, Side.HIGH));
    }
  }

  /** The bound itself. */
  public double bound(LinearProgram program) {
    if (isVariable) {
      Variable variable = program.variables().get(index);
      return side.isLow() ? variable.low() : variable.high();
    }
    Constraint constraint = program.constraints().get(index);
    return side.isLow() ? constraint.low() : constraint.high();
  }

  /** The program with another bound in its place. */
  public LinearProgram at(LinearProgram program, double bound) {
    if (isVariable) {
      Variable variable = program.variables().get(index);
      return program.withVariable(
          index,
          side.isLow()
              ? variable.between(bound, variable.high())
              : variable.between(variable.low(), bound));
    }
    Constraint constraint = program.constraints().get(index);
    return program.withConstraint(
        index,
        side.isLow()
            ? constraint.between(bound, constraint.high())
            : constraint.between(constraint.low(), bound));
  }

  /** The other bound of the pair. */
  Member other() {
    return new Member(isVariable, index, side.isLow() ? Side.HIGH : Side.LOW);
  }

  /** The program without it; what may be nothing at all is then anything from nothing on. */
  public LinearProgram droppedFrom(LinearProgram program) {
    if (isVariable && program.variables().get(index).orZero() && beyondZero(bound(program))) {
      return at(program, 0);
    }
    return at(program, side.isLow() ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);
  }

  private boolean beyondZero(double bound) {
    return side.isLow() ? bound > 0 : bound < 0;
  }
}
