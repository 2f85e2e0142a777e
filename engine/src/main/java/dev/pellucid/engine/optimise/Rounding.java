package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.weighing.Reweighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The shares of an answer as a person writes them: each a whole number of steps from where it
 * stands, all together what they were, and all still kept, in the batch as it is weighed too. It
 * looks near the answer, near the shares as they are written, and where neither keeps all, near the
 * answer that leaves as much room as a step can spoil. So where the recipe as it stands keeps all,
 * there is always one.
 */
public final class Rounding {
  /** Shares that cost more than this part more than the answer are searched for further. */
  private static final double NEAR = 1e-4;

  /** How often what bends is looked at anew. */
  private static final int SETTLING = 6;

  private static final double LEAST = 1e-9;

  /** So many steps from a bound, a line is tried at it. */
  private static final int FEW = 100;

  private static final int MOST_BOUNDS = 4;

  private final Solver solver;
  private final double step;
  private final Optional<Reweighed> scales;

  /**
   * @param decimals of the shares, in percent
   * @param scales on which the batch is weighed; none where that is not asked
   */
  public Rounding(Solver solver, int decimals, Optional<Reweighed> scales) {
    this.solver = solver;
    this.step = Math.pow(10, -decimals);
    this.scales = scales;
  }

  /** In the order of the free lines, in points; empty where nothing near keeps all. */
  public Optional<double[]> of(Answer.Found found) {
    Rooms rooms = new Rooms(found, scales);
    boolean[] fixed = chosen(found);
    Optional<Lattice> near = near(rooms, fixed, found.shares());
    if (near.isPresent() && isNear(near.get(), found)) {
      return Optional.of(near.get().shares());
    }
    Optional<Lattice> best = cheaper(near, near(rooms, fixed, written(found, fixed)));
    for (double[] start : atBounds(found)) {
      best = cheaper(best, near(rooms, fixed, start));
    }
    if (best.isEmpty()) {
      best = spared(found).flatMap(shares -> near(rooms, fixed, shares));
    }
    return best.map(it -> settled(rooms, fixed, it).shares());
  }

  /**
   * The answers with a line at a bound that it is a few steps from: where little of it is left,
   * what it is weighed as may be far off.
   */
  private List<double[]> atBounds(Answer.Found found) {
    List<double[]> starts = new ArrayList<>();
    List<Free> free = found.task().free();
    for (int i = 0; i < free.size() && starts.size() < MOST_BOUNDS; i++) {
      Free one = free.get(i);
      double share = found.shares()[i];
      double low = one.orNone() ? 0 : one.low();
      double bound = share - low < one.high() - share ? low : one.high();
      double off = Math.abs(share - bound);
      if (off > LEAST && off < FEW * step && one.step() == 0) {
        List<Free> lines = new ArrayList<>(free);
        lines.set(i, new Free(one.line(), bound, bound, false, 0));
        solved(found.task().with(lines)).ifPresent(starts::add);
      }
    }
    return starts;
  }

  private Optional<double[]> solved(Task task) {
    return new Optimiser(solver)
        .solve(task)
        .byKind(
            it -> Optional.of(it.shares()), unmet -> Optional.empty(), none -> Optional.empty());
  }

  /** Searched from where it ended, until nothing is found: so a second run finds nothing either. */
  private Lattice settled(Rooms rooms, boolean[] fixed, Lattice first) {
    Lattice best = first;
    for (int i = 0; i < SETTLING; i++) {
      Optional<Lattice> again = near(rooms, fixed, best.shares());
      if (again.isEmpty() || again.get().cost() >= best.cost() - LEAST) {
        return best;
      }
      best = again.get();
    }
    return best;
  }

  /** What the answer has chosen stays: what is left out, and whole multiples. */
  private static boolean[] chosen(Answer.Found found) {
    boolean[] fixed = new boolean[found.shares().length];
    for (int i = 0; i < fixed.length; i++) {
      Free one = found.task().free().get(i);
      fixed[i] = one.step() > 0 || one.orNone() && one.low() > 0 && found.shares()[i] < LEAST;
    }
    return fixed;
  }

  private static double[] written(Answer.Found found, boolean[] fixed) {
    double[] shares = found.shares().clone();
    for (int i = 0; i < shares.length; i++) {
      Free one = found.task().free().get(i);
      if (!fixed[i]) {
        shares[i] = Math.max(one.low(), Math.min(one.high(), one.written()));
      }
    }
    return shares;
  }

  private Optional<Lattice> near(Rooms rooms, boolean[] fixed, double[] start) {
    Lattice lattice = new Lattice(rooms, step, fixed);
    double[] from = start;
    for (int i = 0; i < SETTLING; i++) {
      if (!lattice.from(from)) {
        return Optional.empty();
      }
      if (!isNear(lattice, rooms.found)) {
        lattice.further();
      }
      from = lattice.shares();
      if (rooms.settle(from)) {
        return Optional.of(lattice);
      }
    }
    return Optional.empty();
  }

  private static boolean isNear(Lattice lattice, Answer.Found found) {
    return lattice.costsMore() <= NEAR * Math.abs(found.feed().costPer100());
  }

  private static Optional<Lattice> cheaper(Optional<Lattice> one, Optional<Lattice> other) {
    return other.isEmpty() || one.isPresent() && one.get().cost() <= other.get().cost()
        ? one
        : other;
  }

  /** The answer with as much room left as a step can spoil. */
  private Optional<double[]> spared(Answer.Found found) {
    Rooms rooms = new Rooms(found, Optional.empty());
    List<Tightened> kept = new ArrayList<>();
    int r = 0;
    for (Tightened one : found.task().kept()) {
      double spare = one.spare();
      int count = rooms.counts[kept.size()];
      for (int i = 0; i < count; i++) {
        spare = Math.max(spare, one.spare() + rooms.spoilt(r++) * step);
      }
      kept.add(new Tightened(one.of(), spare));
    }
    return solved(found.task().keeping(kept));
  }
}
