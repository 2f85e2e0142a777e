package dev.pellucid.engine.linear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Between which values of one bound of a constraint its price stays what it is. Where low and high
 * are one, both move. Where whole multiples or nothing at all were chosen, it holds of the program
 * with these choices made.
 *
 * @param from the least value of the bound, which may be infinite
 * @param to the greatest value of the bound, which may be infinite
 * @param price that it has between them
 */
public record PriceStays(double from, double to, double price) {
  /** Two prices that are this near to each other are one. */
  private static final double SAME = 1e-7;

  /** How far beyond an end it is solved again. */
  private static final double BEYOND = 1e-6;

  /** How many ends are passed at most, where the price is the same beyond. */
  private static final int PASSED = 40;

  /** Empty where the bound is infinite, or the program has no optimum. */
  public static Optional<PriceStays> of(
      LinearProgram program, Solver solver, int constraint, Side side) {
    Member member = Member.constraint(constraint, side);
    if (!Double.isFinite(member.bound(program))) {
      return Optional.empty();
    }
    return solver
        .solve(program)
        .optimum()
        .map(o -> new Moved(program.withChoices(o.values()), solver, member).stays(o));
  }

  /** One bound that is moved. */
  private record Moved(LinearProgram program, Solver solver, Member member) {
    PriceStays stays(Optimum optimum) {
      double price = price(optimum);
      double bound = member.bound(program);
      return new PriceStays(end(optimum, bound, price, -1), end(optimum, bound, price, 1), price);
    }

    private boolean isEquality() {
      Constraint constraint = program.constraints().get(member.index());
      return constraint.low() == constraint.high();
    }

    /** What this bound costs, which is not what the other bound of the same constraint costs. */
    private double price(Optimum optimum) {
      double price = optimum.price(member.index());
      if (isEquality()) {
        return price;
      }
      return member.side().isLow() ? Math.max(price, 0) : Math.min(price, 0);
    }

    private LinearProgram at(double bound) {
      return isEquality()
          ? program.withConstraint(
              member.index(), program.constraints().get(member.index()).between(bound, bound))
          : member.at(program, bound);
    }

    /**
     * Goes one way, from the end of one optimum to that of the next, while the price is the same.
     */
    private double end(Optimum optimum, double bound, double price, int way) {
      Optimum here = optimum;
      double at = bound;
      for (int passed = 0; passed < PASSED; passed++) {
        double end = furthest(here, at, way);
        if (Double.isInfinite(end)) {
          return end;
        }
        at = end + way * BEYOND * Math.max(Math.abs(end), size());
        Optional<Optimum> next = solver.solve(at(at)).optimum();
        if (next.isEmpty() || !isSame(price(next.get()), price)) {
          return end;
        }
        here = next.get();
      }
      return at;
    }

    private static boolean isSame(double one, double other) {
      return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
    }

    /** A measure for a bound that is zero: the greatest coefficient. */
    private double size() {
      double size = 0;
      Constraint constraint = program.constraints().get(member.index());
      for (int j = 0; j < constraint.size(); j++) {
        size = Math.max(size, Math.abs(constraint.coefficient(j)));
      }
      return size;
    }

    private double furthest(Optimum optimum, double bound, int way) {
      LinearProgram proven = provenBy(optimum, at(bound));
      double[] figure = new double[proven.variables().size()];
      figure[figure.length - 1] = 1;
      return Reach.of(proven, figure, solver)
          .map(reach -> way > 0 ? reach.most() : reach.least())
          .filter(end -> (end - bound) * way > 0)
          .orElse(bound);
    }

    /**
     * All pairs of values and a bound that the same prices prove: what has a reduced cost stays
     * where it is, and what has a price binds. The bound is the last variable.
     */
    private LinearProgram provenBy(Optimum optimum, LinearProgram moved) {
      List<Variable> variables = new ArrayList<>();
      for (int j = 0; j < moved.variables().size(); j++) {
        Variable variable = moved.variables().get(j);
        double value = optimum.value(j);
        variables.add(
            optimum.boundPrice(j) == 0
                ? Variable.of(variable.low(), variable.high(), 0)
                : Variable.of(value, value, 0));
      }
      variables.add(Variable.of(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0));
      List<Constraint> constraints = new ArrayList<>();
      for (int i = 0; i < moved.constraints().size(); i++) {
        Constraint constraint = moved.constraints().get(i);
        double price = optimum.price(i);
        boolean isMoved = i == member.index();
        double low = binds(price < 0, constraint.high()) ? constraint.high() : constraint.low();
        double high = binds(price > 0, constraint.low()) ? constraint.low() : constraint.high();
        if (!isMoved) {
          constraints.add(Constraint.of(wider(constraint, 0), low, high));
          continue;
        }
        if (!isEquality() && !Double.isInfinite(otherBound(constraint))) {
          constraints.add(other(constraint, price));
        }
        constraints.add(moved(constraint, price));
      }
      return new LinearProgram(variables, constraints);
    }

    /** A price of a bound that is none is what the digits of the solver leave. */
    private static boolean binds(boolean hasPrice, double bound) {
      return hasPrice && !Double.isInfinite(bound);
    }

    private double otherBound(Constraint constraint) {
      return member.side().isLow() ? constraint.high() : constraint.low();
    }

    /** The bound of the same constraint that does not move. */
    private Constraint other(Constraint constraint, double price) {
      double bound = otherBound(constraint);
      boolean isLow = member.side().isLow();
      boolean binds = isLow ? price < 0 : price > 0;
      double[] row = wider(constraint, 0);
      if (binds) {
        return Constraint.of(row, bound, bound);
      }
      return isLow
          ? Constraint.of(row, Double.NEGATIVE_INFINITY, bound)
          : Constraint.of(row, bound, Double.POSITIVE_INFINITY);
    }

    private Constraint moved(Constraint constraint, double price) {
      boolean isLow = member.side().isLow();
      boolean binds = isEquality() || (isLow ? price > 0 : price < 0);
      double low = binds || isLow ? 0 : Double.NEGATIVE_INFINITY;
      double high = binds || !isLow ? 0 : Double.POSITIVE_INFINITY;
      return Constraint.of(wider(constraint, -1), low, high);
    }

    private static double[] wider(Constraint constraint, double last) {
      double[] row = new double[constraint.size() + 1];
      for (int j = 0; j < constraint.size(); j++) {
        row[j] = constraint.coefficient(j);
      }
      row[row.length - 1] = last;
      return row;
    }
  }
}
