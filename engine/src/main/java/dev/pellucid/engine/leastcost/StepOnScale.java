package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.weighing.Reweighed;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The steps of a task as a batch can weigh them: a step that is finer than what the scale of its
 * line shows becomes the next whole multiple of itself that is not.
 */
final class StepOnScale {
  private StepOnScale() {}

  /**
   * @param scales of the batch; none where it has no size, or no plant
   */
  static Task of(Task task, Optional<Reweighed> scales) {
    if (scales.isEmpty()) {
      return task;
    }
    List<Free> lines = new ArrayList<>();
    for (Free one : task.free()) {
      lines.add(one.step() > 0 ? coarser(one, scales.get()) : one);
    }
    return task.with(lines);
  }

  private static Free coarser(Free one, Reweighed scales) {
    double shown = scales.step(one.line(), Math.max(one.written(), one.low()));
    double times = Math.max(1, Closeness.up(shown / one.step()));
    return new Free(one.line(), one.low(), one.high(), one.orNone(), one.step() * times);
  }
}
