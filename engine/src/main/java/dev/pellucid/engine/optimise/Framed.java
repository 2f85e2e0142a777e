package dev.pellucid.engine.optimise;

import dev.pellucid.engine.linear.LinearProgram;
import java.util.List;

/**
 * A task as a linear program, near some feed.
 *
 * @param program its first variables are the free lines, in their order
 * @param rows what each constraint stands for; empty for the total and for moves, which stand last
 * @param costPerKg money per kg in the bags of the feed that it was framed around
 * @param missed by how much that feed misses what it misses most, as a part of its size
 * @param bagged kg in the bags of 100 kg of that feed
 */
record Framed(
    LinearProgram program, List<Requirement> rows, double costPerKg, double missed, double bagged) {
  /** By how much, as a part of its size, a room may be missed and count as kept. */
  static final double STILL = 1e-9;

  Framed {
    rows = List.copyOf(rows);
  }

  /** Whether that feed keeps all of them. */
  boolean holds() {
    return missed <= STILL;
  }
}
