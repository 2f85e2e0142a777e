package dev.pellucid.engine.plan;

import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.plan.OnScales.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One thing that is tipped into the mixer, or onto the kernel.
 *
 * <p>Half of the largest dry line goes in first, so that premixes and other small lines fall on a
 * bed of meal and are covered by the rest; liquids come last (common practice, no source).
 *
 * @param part how much of its line
 */
public record Added(LoadLine line, Part part) {
  /** How much of a line goes in at once. */
  public enum Part {
    ALL,
    FIRST_HALF,
    OTHER_HALF
  }

  static List<Added> asWritten(List<LoadLine> lines) {
    return lines.stream().map(line -> new Added(line, Part.ALL)).toList();
  }

  static List<Added> inOrder(List<LoadLine> lines) {
    List<Added> order = new ArrayList<>();
    Optional<LoadLine> bed = bed(lines);
    bed.ifPresent(line -> order.add(new Added(line, Part.FIRST_HALF)));
    for (Turn turn : Turn.values()) {
      for (LoadLine line : lines) {
        if (line.turn() == turn && bed.filter(line::equals).isEmpty()) {
          order.add(new Added(line, Part.ALL));
        }
      }
      if (turn == Turn.LARGE) {
        bed.ifPresent(line -> order.add(new Added(line, Part.OTHER_HALF)));
      }
    }
    return order;
  }

  /** The largest of the large dry lines, where there are small ones to lie between its halves. */
  private static Optional<LoadLine> bed(List<LoadLine> lines) {
    Optional<LoadLine> largest = Optional.empty();
    boolean small = false;
    for (LoadLine line : lines) {
      small |= line.turn() == Turn.SMALL || line.turn() == Turn.APART_FROM_VITAMINS;
      if (line.turn() == Turn.LARGE
          && (largest.isEmpty() || line.wanted().asDouble() > largest.get().wanted().asDouble())) {
        largest = Optional.of(line);
      }
    }
    return small ? largest : Optional.empty();
  }
}
