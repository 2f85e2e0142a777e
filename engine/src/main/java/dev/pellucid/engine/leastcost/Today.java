package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;

/** Whether a recipe as it stands is an answer: it keeps all that is asked of it. */
final class Today {
  private static final double STILL = 1e-9;

  private Today() {}

  static boolean keepsAll(Posed posed) {
    for (LimitStatus status : posed.recipe().limits()) {
      if (status.state().isBroken()) {
        return false;
      }
    }
    Task task = posed.task();
    for (Free one : task.free()) {
      if (isOutside(one)) {
        return false;
      }
    }
    Slopes slopes = new Slopes(task.feed());
    for (Tightened one : task.kept()) {
      for (Slope room : one.of().rooms(slopes)) {
        if (room.now() < -STILL * size(task, room)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether a line may not stay as it is written. */
  static boolean isOutside(Free one) {
    boolean left = one.orNone() && one.written() == 0;
    return !left
        && (one.written() < one.low() - STILL
            || one.written() > one.high() + STILL
            || one.step() > 0 && !isWhole(one.written() / one.step()));
  }

  private static boolean isWhole(double steps) {
    return Math.abs(steps - Math.rint(steps)) <= 1e-7;
  }

  private static double size(Task task, Slope room) {
    double size = 1e-12;
    for (Free one : task.free()) {
      size += Math.abs(room.perPoint()[one.line().index()] * one.written());
    }
    return size;
  }
}
