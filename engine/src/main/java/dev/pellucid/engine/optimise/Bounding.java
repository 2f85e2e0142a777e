package dev.pellucid.engine.optimise;

import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;

/** A bound of a task that can be moved: of something to keep, or of the share of a free line. */
public interface Bounding {
  /** The task with the bound there. */
  Task at(double bound);

  /**
   * By how much a kg in the bags costs more when one more is asked of it: more of a minimum, less
   * of a maximum.
   *
   * @param found of the task with the bound there
   */
  double price(Answer.Found found, double bound);

  /** Which way it goes when more is asked: 1 for a minimum, -1 for a maximum. */
  int tighter();

  /** Of something to keep, in the base of its kind. */
  static Bounding of(Task task, Movable one) {
    return new Bounding() {
      @Override
      public Task at(double bound) {
        Requirement moved = one.at().apply(bound);
        List<Tightened> kept = new ArrayList<>(task.kept().size());
        for (Tightened each : task.kept()) {
          kept.add(each.of() == one.of() ? new Tightened(moved, each.spare()) : each);
        }
        return task.keeping(kept);
      }

      @Override
      public double price(Answer.Found found, double bound) {
        for (int i = 0; i < task.kept().size(); i++) {
          if (task.kept().get(i).of() == one.of()) {
            Requirement moved = found.task().kept().get(i).of();
            return new ProgramPrices(found)
                .perUnit(new Movable(moved, one.side(), bound, one.at()));
          }
        }
        return 0;
      }

      @Override
      public int tighter() {
        return one.tighter();
      }
    };
  }

  /**
   * Of the share of a free line, in points.
   *
   * @param free its place among them
   */
  static Bounding of(Task task, int free, Bound.Side side) {
    return new Bounding() {
      @Override
      public Task at(double bound) {
        List<Free> lines = new ArrayList<>(task.free());
        Free one = lines.get(free);
        lines.set(
            free,
            side == Bound.Side.MIN
                ? one.between(bound, one.high())
                : one.between(one.low(), bound));
        return task.with(lines);
      }

      @Override
      public double price(Answer.Found found, double bound) {
        double price = new ProgramPrices(found).perPoint(free);
        return Math.max(0, side == Bound.Side.MIN ? price : -price);
      }

      @Override
      public int tighter() {
        return side == Bound.Side.MIN ? 1 : -1;
      }
    };
  }
}
