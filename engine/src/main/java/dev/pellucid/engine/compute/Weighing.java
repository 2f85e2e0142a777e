package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.Arrays;
import java.util.List;

/**
 * What is weighed: as written, as rounded by a plan, or as made. In kg per 100 kg of recipe, by the
 * index of the line.
 *
 * @param inFeed what is to be in the feed
 * @param onTop what is weighed on top and expected to be lost
 */
public record Weighing(List<Double> inFeed, List<Double> onTop) {
  public Weighing {
    inFeed = List.copyOf(inFeed);
    onTop = List.copyOf(onTop);
  }

  public static Weighing asWritten(ResolvedRecipe recipe) {
    return new Weighing(
        recipe.lines().stream().map(line -> line.share().kgPer100()).toList(),
        recipe.lines().stream().map(line -> line.onTop().kgPer100()).toList());
  }

  /** The kg of each line at an end. */
  double[] kg(List<Line> lines, End end) {
    double[] kg = new double[lines.size()];
    Arrays.setAll(kg, i -> inFeed.get(i) + (end == End.RICHEST ? onTop.get(i) : 0));
    return kg;
  }
}
