package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Solves tasks that are near one that is solved, one after the other: with another price, a bound
 * moved, one line more. Of all that is kept few things bind, so it is solved with those alone, and
 * the others are looked at afterwards; what the answer does not keep is taken in, and it is solved
 * again. What once was taken in stays so for the next.
 */
public final class Nearby {
  private static final double STILL = 1e-9;
  private static final double TINY = 1e-15;

  private final Optimiser optimiser;
  private final int size;

  /** What is taken in, by its place among what is kept. */
  private final BitSet taken = new BitSet();

  public Nearby(Optimiser optimiser, Answer.Found found) {
    this.optimiser = optimiser;
    this.size = found.task().kept().size();
    ProgramPrices prices = new ProgramPrices(found);
    for (int i = 0; i < size; i++) {
      if (prices.binding(found.task().kept().get(i).of())) {
        taken.set(i);
      }
    }
  }

  /**
   * The answer of a task, looked for from some shares on.
   *
   * @param task that keeps the same in the same order, and maybe more behind it
   * @param shares of its free lines from which it is solved
   */
  public Answer solve(Task task, double[] shares) {
    taken.set(size, Math.max(size, task.kept().size()));
    Answer answer = optimiser.near(withTaken(task), shares);
    while (answer.byKind(found -> takesMore(task, found), unmet -> false, undecided -> false)) {
      answer = optimiser.near(withTaken(task), shares);
    }
    return answer.byKind(
        found ->
            new Answer.Found(
                task,
                found.feed(),
                found.shares(),
                found.program(),
                found.rows(),
                found.optimum(),
                found.rounds()),
        unmet -> unmet,
        undecided -> undecided);
  }

  private Task withTaken(Task task) {
    List<Tightened> some = new ArrayList<>();
    for (int i = 0; i < task.kept().size(); i++) {
      if (taken.get(i)) {
        some.add(task.kept().get(i));
      }
    }
    return task.keeping(some);
  }

  /** Takes in what an answer does not keep. */
  private boolean takesMore(Task task, Answer.Found found) {
    Slopes slopes = new Slopes(found.feed());
    boolean more = false;
    for (int i = 0; i < task.kept().size(); i++) {
      if (!taken.get(i) && !isKept(task, task.kept().get(i), slopes, found.shares())) {
        taken.set(i);
        more = true;
      }
    }
    return more;
  }

  private static boolean isKept(Task task, Tightened one, Slopes slopes, double[] shares) {
    for (Slope room : one.rooms(slopes)) {
      double size = TINY;
      for (int i = 0; i < shares.length; i++) {
        size += Math.abs(room.perPoint()[task.free().get(i).line().index()] * shares[i]);
      }
      if (room.now() < -STILL * size) {
        return false;
      }
    }
    return true;
  }
}
