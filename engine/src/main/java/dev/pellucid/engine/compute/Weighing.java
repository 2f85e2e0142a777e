package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.ArrayList;
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
    List<Double> inFeed = new ArrayList<>(recipe.lines().size());
    List<Double> onTop = new ArrayList<>(recipe.lines().size());
    for (Line line : recipe.lines()) {
      inFeed.add(line.share().kgPer100());
      onTop.add(line.onTopKg(batchKg, 1) / batchKg * 100);
    }
    return new Weighing(inFeed, onTop);
  }

  /** A feed as it was computed, each line weighed out once. */
  public static Weighing of(ComputedFeed feed) {
    return of(feed.recipe(), feed.recipe().batch().map(feed::weighed).orElse(UNTOLD_KG));
  }

  /** The same of a batch that loses all that is weighed on top. */
  public Weighing withoutOnTop() {
    return new Weighing(inFeed, Collections.nCopies(inFeed.size(), 0.0));
  }

  /**
   * The largest part by which another weighing of the recipe has more or less of a line, in the
   * feed or with all that is weighed on top; without end where it has some of a line and this has
   * none.
   */
  public double partOff(Weighing other) {
    double most = 0;
    for (int line = 0; line < inFeed.size(); line++) {
      most = Math.max(most, partOff(inFeed.get(line), other.inFeed.get(line)));
      most =
          Math.max(
              most,
              partOff(
                  inFeed.get(line) + onTop.get(line),
                  other.inFeed.get(line) + other.onTop.get(line)));
    }
    return most;
  }

  private static double partOff(double kg, double other) {
    return kg == other ? 0 : kg > 0 ? Math.abs(other / kg - 1) : Double.POSITIVE_INFINITY;
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
