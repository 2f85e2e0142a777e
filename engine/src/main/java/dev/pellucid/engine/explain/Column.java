package dev.pellucid.engine.explain;

import java.util.List;

/**
 * What each line brings of one figure, per kg of finished feed as fed: an {@link Explanation.Sum}
 * without its sources and ends, for many figures side by side.
 *
 * @param title for people
 * @param figure on target and fresh, with the digits that are printed; the cells add up to it
 * @param held how it stands with the limits on it
 */
public record Column(String title, String unit, String figure, List<Cell> cells, List<Held> held) {
  public Column {
    cells = List.copyOf(cells);
    held = List.copyOf(held);
  }

  /**
   * A limit, and the figure that is judged by it.
   *
   * @param min whether it is a minimum, which is judged where the feed is poorest
   * @param judged with the steps to it, where a part of batches must keep it: {@code 35.84 - 1.01 =
   *     34.83}
   * @param asked in words
   */
  public record Held(boolean min, String judged, String asked) {}

  /**
   * One that brings something, down to the last digit of the figure.
   *
   * @param line of the recipe, and through what it comes
   * @param title the same for people
   * @param kept percent of it that the process leaves; empty where that is all
   */
  public record Cell(String line, String title, String brings, String kept) {}
}
