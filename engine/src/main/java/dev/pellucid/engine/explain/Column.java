package dev.pellucid.engine.explain;

import java.util.List;

/**
 * What each line brings of one figure, per kg of finished feed as fed: an {@link Explanation.Sum}
 * without its sources and ends, for many figures side by side.
 *
 * @param figure on target and fresh, with the digits that are printed; the cells add up to it
 */
public record Column(String title, String unit, String figure, List<Cell> cells) {
  public Column {
    cells = List.copyOf(cells);
  }

  /**
   * One that brings something, down to the last digit of the figure.
   *
   * @param line of the recipe, and through what it comes
   * @param kept percent of it that the process leaves; empty where that is all
   */
  public record Cell(String line, String brings, String kept) {}
}
