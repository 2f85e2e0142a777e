package dev.pellucid.engine.optimise;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** What can be taken out of a task: something to keep, an end of a line, the bound of all moves. */
public sealed interface Part {
  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<Kept, R> kept,
      Function<Least, R> least,
      Function<Most, R> most,
      Function<Moves, R> moves);

  /** How readily it is loosened, as far as it says so by itself. */
  default Ease ease() {
    return byKind(
        kept -> ease(kept.of().of()), least -> Ease.LINE, most -> Ease.LINE, moves -> Ease.MOVE);
  }

  private static Ease ease(Requirement one) {
    return one.byKind(
        limit -> limit.asTold() ? Ease.NEVER : ease(limit.limit().origin().kind()),
        practice -> Ease.PRACTICE,
        cap -> Ease.NEVER,
        label -> Ease.LABEL,
        order -> Ease.LABEL,
        stock -> Ease.NEVER);
  }

  private static Ease ease(Limit.Kind kind) {
    return switch (kind) {
      case NEED, LAW, GUIDANCE -> Ease.NEVER;
      case PRACTICE -> Ease.PRACTICE;
      case RECIPE -> Ease.RECIPE;
    };
  }

  /** Something to keep. */
  record Kept(Tightened of) implements Part {
    @Override
    public <R> R byKind(
        Function<Kept, R> kept,
        Function<Least, R> least,
        Function<Most, R> most,
        Function<Moves, R> moves) {
      return kept.apply(this);
    }
  }

  /**
   * The least that a line may be.
   *
   * @param index its place among those that are free
   * @param points the least
   */
  record Least(int index, Line line, double points) implements Part {
    @Override
    public <R> R byKind(
        Function<Kept, R> kept,
        Function<Least, R> least,
        Function<Most, R> most,
        Function<Moves, R> moves) {
      return least.apply(this);
    }
  }

  /**
   * The most that a line may be.
   *
   * @param index its place among those that are free
   * @param points the most
   */
  record Most(int index, Line line, double points) implements Part {
    @Override
    public <R> R byKind(
        Function<Kept, R> kept,
        Function<Least, R> least,
        Function<Most, R> most,
        Function<Moves, R> moves) {
      return most.apply(this);
    }
  }

  /** The most that may move, all together. */
  record Moves(double points) implements Part {
    @Override
    public <R> R byKind(
        Function<Kept, R> kept,
        Function<Least, R> least,
        Function<Most, R> most,
        Function<Moves, R> moves) {
      return moves.apply(this);
    }
  }

  /** All of a task that bind anything: what is to be kept first, then the lines, then moves. */
  static List<Part> of(Task task) {
    List<Part> parts = new ArrayList<>();
    for (Tightened one : task.kept()) {
      parts.add(new Kept(one));
    }
    for (int i = 0; i < task.free().size(); i++) {
      Free one = task.free().get(i);
      if (one.low() > one.floor()) {
        parts.add(new Least(i, one.line(), one.low()));
      }
      if (one.high() < Free.ALL) {
        parts.add(new Most(i, one.line(), one.high()));
      }
    }
    if (Double.isFinite(task.mostMoved())) {
      parts.add(new Moves(task.mostMoved()));
    }
    return parts;
  }

  /** A task without some of its parts. */
  static Task without(Task task, List<Part> parts) {
    List<Part> left = of(task);
    left.removeAll(parts);
    return only(task, left);
  }

  /**
   * A task of which only some parts are left; shares are never below nothing, and add up to all.
   */
  static Task only(Task task, List<Part> parts) {
    List<Tightened> kept = new ArrayList<>();
    double[] low = new double[task.free().size()];
    for (int i = 0; i < low.length; i++) {
      low[i] = task.free().get(i).floor();
    }
    double[] high = new double[low.length];
    Arrays.fill(high, Free.ALL);
    double[] moved = {Double.POSITIVE_INFINITY};
    for (Part part : parts) {
      part.byKind(
          one -> kept.add(one.of()),
          least -> low[least.index()] = least.points(),
          most -> high[most.index()] = most.points(),
          moves -> moved[0] = moves.points());
    }
    List<Free> free = new ArrayList<>();
    for (int i = 0; i < low.length; i++) {
      free.add(task.free().get(i).between(low[i], high[i]));
    }
    return new Task(task.feed(), free, kept, moved[0], task.aim());
  }
}
