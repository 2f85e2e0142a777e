package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.Collections;
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

  /** The same of a batch that loses all that is weighed on top. */
  public Weighing withoutOnTop() {
    return new Weighing(inFeed, Collections.nCopies(inFeed.size(), 0.0));
  }

  /** A leaf of a line that is weighed so. */
  ExplodedLine of(ExplodedLine leaf) {
    Line line = leaf.line();
    return leaf.weighed(inFeed.get(line.index()), richest(line));
  }

  /** A line with all that is weighed of it. */
  double richest(Line line) {
    return inFeed.get(line.index()) + onTop.get(line.index());
  }
}
