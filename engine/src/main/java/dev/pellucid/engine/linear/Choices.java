package dev.pellucid.engine.linear;

import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Finds which whole multiples, and which amounts of nothing at all, are of least cost: a program of
 * amounts alone is parted in two where a value is none that may be chosen, and a part is left aside
 * once its least cost is above that of an answer at hand. From each parting it goes on with the
 * part that is nearer, so that answers come early, and then takes up the part of the least cost.
 * The first of equals is taken, so the search is the same each time.
 */
final class Choices {
  /** By which part of its cost an answer must be less to be better than another. */
  private static final double BETTER = 1e-10;

  private final LinearProgram whole;
  private final Solver amounts;
  private final int most;
  private final PriorityQueue<Part> open = new PriorityQueue<>();
  private int parts;
  private double best = Double.POSITIVE_INFINITY;
  private Outcome found = new Infeasible();

  /** A part of the program, with its optimum. */
  private record Part(LinearProgram program, Optimum optimum, int number)
      implements Comparable<Part> {
    @Override
    public int compareTo(Part other) {
      int byCost = Double.compare(optimum.cost(), other.optimum.cost());
      return byCost != 0 ? byCost : Integer.compare(number, other.number);
    }
  }

  /**
   * @param amounts solves programs of amounts alone
   * @param most parts that are looked at before the search is given up
   */
  Choices(LinearProgram whole, Solver amounts, int most) {
    this.whole = whole;
    this.amounts = amounts;
    this.most = most;
  }

  Outcome search() {
    LinearProgram relaxed = whole.relaxed();
    Outcome first = amounts.solve(relaxed);
    if (first.optimum().isEmpty()) {
      return first;
    }
    open.add(new Part(relaxed, first.optimum().get(), parts++));
    while (!open.isEmpty() && isBetter(open.element().optimum)) {
      Part part = open.remove();
      while (part != null) {
        if (parts > most) {
          return new Failed("after " + most + " trials it is not settled what to choose");
        }
        part = parted(part);
      }
    }
    return found;
  }

  private boolean isBetter(Optimum optimum) {
    return best == Double.POSITIVE_INFINITY || optimum.cost() < best - BETTER * Math.abs(best);
  }

  /** The part to go on with, or none where this one is an answer or no part of it is better. */
  private @Nullable Part parted(Part part) {
    double[] values = part.optimum.values();
    int worst = -1;
    double off = 0;
    for (int j = 0; j < values.length; j++) {
      double offHere = whole.variables().get(j).off(values[j]);
      if (offHere > off) {
        off = offHere;
        worst = j;
      }
    }
    if (worst < 0) {
      answered(part);
      return null;
    }
    Variable[] sides = whole.variables().get(worst).parted(values[worst]);
    Variable here = part.program.variables().get(worst);
    Part nearer = part(part.program.withVariable(worst, sides[0].within(here)));
    Part further = part(part.program.withVariable(worst, sides[1].within(here)));
    if (nearer != null && further != null) {
      open.add(further);
    }
    return nearer != null ? nearer : further;
  }

  private @Nullable Part part(LinearProgram program) {
    Optional<Optimum> optimum = amounts.solve(program).optimum().filter(this::isBetter);
    return optimum.isEmpty() ? null : new Part(program, optimum.get(), parts++);
  }

  /** All values may be chosen: they are put where they are, to the last bit, and solved for. */
  private void answered(Part part) {
    double[] values = part.optimum.values();
    for (int j = 0; j < values.length; j++) {
      values[j] = whole.variables().get(j).nearest(values[j]);
    }
    Optional<Optimum> exact = amounts.solve(whole.withChoices(values)).optimum();
    if (exact.isPresent() && isBetter(exact.get())) {
      best = exact.get().cost();
      found = exact.get().chosen();
    }
  }
}
