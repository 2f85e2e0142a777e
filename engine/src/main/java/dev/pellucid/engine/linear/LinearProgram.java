package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.List;

/** The least of {@code cost * x}, where x keeps the bounds of all variables and constraints. */
public final class LinearProgram {
  private final List<Variable> variables;
  private final List<Constraint> constraints;

  public LinearProgram(List<Variable> variables, List<Constraint> constraints) {
    this.variables = List.copyOf(variables);
    this.constraints = List.copyOf(constraints);
    if (this.variables.isEmpty()) {
      throw new IllegalArgumentException("nothing to find");
    }
    for (Constraint constraint : this.constraints) {
      if (constraint.size() != this.variables.size()) {
        throw new IllegalArgumentException(
            constraint.size() + " coefficients for " + this.variables.size() + " variables");
      }
    }
  }

  public List<Variable> variables() {
    return variables;
  }

  public List<Constraint> constraints() {
    return constraints;
  }

  /** The same with another variable at this place. */
  public LinearProgram withVariable(int index, Variable variable) {
    List<Variable> changed = new ArrayList<>(variables);
    changed.set(index, variable);
    return new LinearProgram(changed, constraints);
  }

  /** The same with another constraint at this place. */
  public LinearProgram withConstraint(int index, Constraint constraint) {
    List<Constraint> changed = new ArrayList<>(constraints);
    changed.set(index, constraint);
    return new LinearProgram(variables, changed);
  }

  /** The same with one more constraint, which is the last. */
  public LinearProgram plus(Constraint constraint) {
    List<Constraint> more = new ArrayList<>(constraints);
    more.add(constraint);
    return new LinearProgram(variables, more);
  }

  /** The same with these costs in place of its own. */
  public LinearProgram withCosts(double[] costs) {
    List<Variable> changed = new ArrayList<>();
    for (int j = 0; j < variables.size(); j++) {
      changed.add(variables.get(j).at(costs[j]));
    }
    return new LinearProgram(changed, constraints);
  }

  /** What these values cost. */
  public double cost(double[] x) {
    double sum = 0;
    for (int j = 0; j < x.length; j++) {
      sum += variables.get(j).cost() * x[j];
    }
    return sum;
  }

  /** Whether any variable has a choice in it that is not one of amount alone. */
  public boolean isInteger() {
    for (Variable variable : variables) {
      if (variable.isChosen()) {
        return true;
      }
    }
    return false;
  }

  /** Of amounts alone, each with all amounts between those that could be chosen. */
  LinearProgram relaxed() {
    if (!isInteger()) {
      return this;
    }
    List<Variable> relaxed = new ArrayList<>();
    for (Variable variable : variables) {
      relaxed.add(variable.relaxed());
    }
    return new LinearProgram(relaxed, constraints);
  }

  /**
   * Of amounts alone, with what these values chose: whole multiples stay at theirs, and what may be
   * nothing at all stays nothing or does not become it.
   */
  public LinearProgram withChoices(double[] values) {
    if (!isInteger()) {
      return this;
    }
    List<Variable> chosen = new ArrayList<>();
    for (int j = 0; j < values.length; j++) {
      chosen.add(variables.get(j).chosen(values[j]));
    }
    return new LinearProgram(chosen, constraints);
  }
}
