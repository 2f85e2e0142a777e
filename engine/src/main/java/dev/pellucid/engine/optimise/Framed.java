package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.LinearProgram;
import java.util.List;

/**
 * A task as a linear program, near some feed.
 *
 * @param program its first variables are the free lines, in their order
 * @param rows what each constraint stands for; empty for the total and for moves, which stand last
 * @param costPerKg money per kg in the bags of the feed that it was framed around
 * @param holds whether that feed keeps all of them
 * @param bagged kg in the bags of 100 kg of that feed
 */
record Framed(
    LinearProgram program, List<Requirement> rows, double costPerKg, boolean holds, double bagged) {
  Framed {
    rows = List.copyOf(rows);
  }
}
