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
  private static final double UNTOLD_KG = 100;

  public Weighing {
    inFeed = List.copyOf(inFeed);
    onTop = List.copyOf(onTop);
  }

  /** A batch of so many kg, each line weighed out once. */
  public static Weighing of(ResolvedRecipe recipe, double batchKg) {
    return new Weighing(
        recipe.lines().stream().map(line -> line.share().kgPer100()).toList(),
        recipe.lines().stream().map(line -> line.onTopKg(batchKg, 1) / batchKg * 100).toList());
  }

  /** A feed as it was computed, each line weighed out once. */
  public static Weighing of(ComputedFeed feed) {
    return of(feed.recipe(), feed.recipe().batch().map(feed::weighed).orElse(UNTOLD_KG));
  }

  /** The kg of each line at an end. */
  double[] kg(List<Line> lines, End end) {
    double[] kg = new double[lines.size()];
    Arrays.setAll(kg, i -> inFeed.get(i) + (end == End.RICHEST ? onTop.get(i) : 0));
    return kg;
  }
}
