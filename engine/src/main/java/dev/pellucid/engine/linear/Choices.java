package dev.pellucid.engine.linear;

import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Finds which whole multiples, and which amounts of nothing at all, are of least cost: a program of
 * amounts alone is parted in two where a value is none that may be chosen, and a part is left aside
 * once its least cost is above that of an answer at hand. It is parted by the variable that raises
 * the cost of both parts the most, as far as that is known of it: the first time a variable comes
 * up both parts are solved for. From each parting it goes on with the part that is nearer, so that
 * answers come early, and then takes up the part of the least cost. The first of equals is taken,
 * so the search is the same each time.
 */
final class Choices {
  /** By which part of its cost an answer must be less to be better than another. */
  private static final double BETTER = 1e-10;

  /** How often a variable is tried before it is known by what it did. */
  private static final int TRIALS = 2;

  /** What counts as a rise where there is none, as a part of the cost. */
  private static final double LEAST_RISE = 1e-7;

  private final LinearProgram whole;
  private final Solver amounts;
  private final int most;
  private final PriorityQueue<Part> open = new PriorityQueue<>();
  private final double[] rises;
  private final int[] trials;
  private int parts;
  private double best = Double.POSITIVE_INFINITY;
  private Outcome found = new Infeasible();
  private @Nullable Outcome failure;

  /** A part of the program, with its optimum. */
  private record Part(LinearProgram program, Optimum optimum, int number)
      implements Comparable<Part> {
    @Override
    public int compareTo(Part other) {
      int byCost = Double.compare(optimum.cost(), other.optimum.cost());
      return byCost != 0 ? byCost : Integer.compare(number, other.number);
    }
  }

  /** Both parts on the sides of a value, the nearer first; there may be nothing better in one. */
  private record Sides(@Nullable Part nearer, @Nullable Part further) {
    boolean isOneSided() {
      return nearer == null || further == null;
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
    this.rises = new double[2 * whole.variables().size()];
    this.trials = new int[whole.variables().size()];
  }

  int parts() {
    return parts;
  }

  Outcome search() {
    LinearProgram relaxed = whole.relaxed();
    Outcome first = amounts.solve(relaxed);
    if (first.optimum().isEmpty()) {
      return first;
    }
    open.add(new Part(relaxed, first.optimum().get(), parts++));
    while (failure == null && !open.isEmpty() && isBetter(open.element().optimum)) {
      Part part = open.remove();
      while (part != null) {
        if (parts > most) {
          return new Failed("after " + most + " trials it is not settled what to choose");
        }
        part = parted(part);
      }
    }
    return failure != null ? failure : found;
  }

  private boolean isBetter(Optimum optimum) {
    return best == Double.POSITIVE_INFINITY || optimum.cost() < best - BETTER * Math.abs(best);
  }

  /** The part to go on with, or none where this one is an answer or no part of it is better. */
  private @Nullable Part parted(Part part) {
    double[] values = part.optimum.values();
    int by = -1;
    double most = -1;
    Sides sides = null;
    for (int j = 0; j < values.length; j++) {
      double off = whole.variables().get(j).off(values[j]);
      if (off == 0) {
        continue;
      }
      boolean isKnown = trials[j] >= TRIALS;
      Sides here = isKnown ? null : sides(part, j, off);
      double weight = here != null && here.isOneSided() ? Double.MAX_VALUE : weight(part, j, off);
      if (weight > most) {
        most = weight;
        by = j;
        sides = here;
      }
      if (here != null && here.isOneSided()) {
        break;
      }
    }
    if (by < 0) {
      answered(part);
      return null;
    }
    Sides taken =
        sides != null ? sides : sides(part, by, whole.variables().get(by).off(values[by]));
    if (taken.nearer != null && taken.further != null) {
      open.add(taken.further);
    }
    return taken.nearer != null ? taken.nearer : taken.further;
  }

  private double weight(Part part, int j, double off) {
    double least = LEAST_RISE * Math.max(Math.abs(part.optimum.cost()), 1e-300);
    double nearer = rises[2 * j] / trials[j] * off;
    double further = rises[2 * j + 1] / trials[j] * (1 - off);
    return Math.max(nearer, least) * Math.max(further, least);
  }

  private Sides sides(Part part, int j, double off) {
    Variable[] sides = whole.variables().get(j).parted(part.optimum.value(j));
    Variable here = part.program.variables().get(j);
    Part nearer = part(part.program.withVariable(j, sides[0].within(here)));
    Part further = part(part.program.withVariable(j, sides[1].within(here)));
    if (nearer != null && further != null) {
      trials[j]++;
      rises[2 * j] += (nearer.optimum.cost() - part.optimum.cost()) / off;
      rises[2 * j + 1] += (further.optimum.cost() - part.optimum.cost()) / (1 - off);
    }
    return new Sides(nearer, further);
  }

  private @Nullable Part part(LinearProgram program) {
    parts++;
    Optional<Optimum> optimum = solved(program).filter(this::isBetter);
    return optimum.isEmpty() ? null : new Part(program, optimum.get(), parts);
  }

  /** What the solver fails at might have been the best, so then nothing is settled. */
  private Optional<Optimum> solved(LinearProgram program) {
    Outcome outcome = amounts.solve(program);
    if (outcome.byKind(one -> false, none -> false, endless -> true, failed -> true)) {
      failure = outcome;
    }
    return outcome.optimum();
  }

  /** All values may be chosen: they are put where they are, to the last bit, and solved for. */
  private void answered(Part part) {
    double[] values = part.optimum.values();
    for (int j = 0; j < values.length; j++) {
      values[j] = whole.variables().get(j).nearest(values[j]);
    }
    Optional<Optimum> exact = solved(whole.withChoices(values));
    if (exact.isEmpty()) {
      failure = new Failed("values that are next to what may be chosen are not to be had there");
    }
    if (exact.isPresent() && isBetter(exact.get())) {
      best = exact.get().cost();
      found = exact.get().chosen();
    }
  }
}
