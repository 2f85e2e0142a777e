package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Advice.Rung;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Optimiser;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The best change of two lines, of three, and of all that are free: each is rounded and proven, and
 * one of more lines is a rung only where it saves as much more as is worth a change.
 *
 * <p>All pairs are looked at, and all threes of up to fourteen lines; of more lines threes are made
 * of the fourteen that differ most in what a point of them costs from what the feed costs. What
 * each can save at most is told by {@link FewLines}; the solver is asked from the most promising on
 * until none can be better than what it has found.
 */
final class Ladder {
  private static final int LINES = 14;

  /** So many are solved for a rung at most. */
  private static final int SOLVED = 8;

  private static final double CHANGED = 1e-7;

  private final Solver solver;
  private final Posed posed;
  private final Answer.Found found;
  private final FewLines few;

  Ladder(Solver solver, Posed posed, Answer.Found found) {
    this.solver = solver;
    this.posed = posed;
    this.found = found;
    this.few = new FewLines(found);
  }

  /** Some lines, by their place among those that are free, and what they cost at least. */
  private record Some(List<Integer> lines, double least) {}

  /**
   * @param all the best change of all lines
   */
  List<Rung> rungs(Cheapest.Result all) {
    List<Rung> rungs = new ArrayList<>();
    if (!all.isProven() || all.edits().isEmpty()) {
      return rungs;
    }
    double before = start();
    for (int count = 2; count <= 3; count++) {
      if (count < changed(all)) {
        Optional<Cheapest.Result> best = best(count, before);
        if (best.isPresent() && isRung(best.get().cost(), before)) {
          before = best.get().cost();
          rungs.add(rung(best.get()));
        }
      }
    }
    if (isRung(all.cost(), before)) {
      rungs.add(rung(all));
    }
    return rungs;
  }

  /** What the first rung must be below: of a recipe that breaks something, nothing. */
  private double start() {
    return Today.keepsAll(posed)
        ? posed.recipe().feed().orElseThrow().costPerKg()
        : Double.POSITIVE_INFINITY;
  }

  private boolean isRung(double cost, double before) {
    return Double.isInfinite(before)
        || Costing.isLess(cost, before) && (before - cost) * 1000 >= posed.wishes().worth();
  }

  private int changed(Cheapest.Result result) {
    int changed = 0;
    for (int i = 0; i < result.written().length; i++) {
      double written = found.task().free().get(i).written();
      changed += Math.abs(result.written()[i] - written) > CHANGED ? 1 : 0;
    }
    return changed;
  }

  private Rung rung(Cheapest.Result result) {
    List<LineMove> lines = new ArrayList<>(Advising.lines(posed, result.written()));
    lines.removeIf(line -> Math.abs(line.moved()) < CHANGED);
    return new Rung(lines, result.cost(), Advising.change(posed.recipe(), result.edits()));
  }

  /** The best of so many lines; empty where none can be a rung. */
  private Optional<Cheapest.Result> best(int count, double before) {
    List<Some> all = new ArrayList<>();
    for (Some some : count == 2 ? pairs() : threes()) {
      if (some.lines.containsAll(outside()) && isRung(some.least, before)) {
        all.add(some);
      }
    }
    all.sort(Comparator.comparingDouble(Some::least));
    double least = Double.POSITIVE_INFINITY;
    Optional<Answer.Found> best = Optional.empty();
    for (int i = 0; i < all.size() && i < SOLVED && all.get(i).least < least; i++) {
      Optional<Answer.Found> one = solved(all.get(i));
      if (one.isPresent() && one.get().feed().costPerKg() < least) {
        least = one.get().feed().costPerKg();
        best = one;
      }
    }
    return best.map(it -> new Cheapest(solver).of(posed, it)).filter(Ladder::isChange);
  }

  private static boolean isChange(Cheapest.Result result) {
    return result.isProven() && !result.edits().isEmpty();
  }

  private Optional<Answer.Found> solved(Some some) {
    Set<Integer> lines = new HashSet<>();
    for (int i : some.lines) {
      lines.add(found.task().free().get(i).line().index());
    }
    return new Optimiser(solver)
        .solve(found.task().of(lines))
        .byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
  }

  /** Lines that may not stay as they are written. */
  private List<Integer> outside() {
    List<Integer> outside = new ArrayList<>();
    for (int i = 0; i < found.task().free().size(); i++) {
      if (Today.isOutside(found.task().free().get(i))) {
        outside.add(i);
      }
    }
    return outside;
  }

  private List<Some> pairs() {
    List<Some> pairs = new ArrayList<>();
    for (int i = 0; i < found.task().free().size(); i++) {
      for (int j = 0; j < i; j++) {
        pairs.add(new Some(List.of(j, i), few.least(j, i)));
      }
    }
    return pairs;
  }

  private List<Some> threes() {
    List<Integer> lines = promising();
    List<Some> threes = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      for (int j = 0; j < i; j++) {
        for (int k = 0; k < j; k++) {
          List<Integer> three = List.of(lines.get(k), lines.get(j), lines.get(i));
          threes.add(new Some(three, few.least(three.get(0), three.get(1), three.get(2))));
        }
      }
    }
    return threes;
  }

  private List<Integer> promising() {
    List<Integer> lines = new ArrayList<>();
    for (int i = 0; i < found.task().free().size(); i++) {
      lines.add(i);
    }
    if (lines.size() > LINES) {
      lines.sort(Comparator.comparingDouble((Integer i) -> -few.differs(i)));
      lines.addAll(0, outside());
      lines = new ArrayList<>(lines.stream().distinct().limit(LINES).sorted().toList());
    }
    return lines;
  }
}
