package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

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

  /**
   * A feed with its lines moved. What a line holds more for stability, and what is weighed on top
   * of it, grow with it; what stays in the bowl each time does not. The rest takes what the others
   * leave.
   *
   * @param points by which the share of each line as written changes, by its index; that of the
   *     rest is not read
   * @return empty where a line would be less than nothing
   */
  public static Optional<Weighing> moved(ComputedFeed feed, double[] points) {
    Weighing is = feed.weighing();
    List<Double> inFeed = new ArrayList<>(is.inFeed);
    List<Double> onTop = new ArrayList<>(is.onTop);
    double taken = 0;
    for (Line line : feed.recipe().lines()) {
      int index = line.index();
      double more = points[index];
      if (more != 0 && !line.rest()) {
        double designed = line.designed().kgPer100();
        double times = designed > 0 ? 1 + more / designed : 1;
        double kg = designed > 0 ? is.inFeed.get(index) * times : more;
        taken += kg - is.inFeed.get(index);
        inFeed.set(index, kg);
        onTop.set(index, grown(line, is.onTop.get(index), times));
        if (kg < 0) {
          return Optional.empty();
        }
      }
    }
    Optional<Line> rest = feed.recipe().rest();
    if (rest.isPresent()) {
      int index = rest.get().index();
      double kg = is.inFeed.get(index) - taken;
      if (kg < 0) {
        return Optional.empty();
      }
      double times = is.inFeed.get(index) > 0 ? kg / is.inFeed.get(index) : 1;
      inFeed.set(index, kg);
      onTop.set(index, grown(rest.get(), is.onTop.get(index), times));
    }
    return Optional.of(new Weighing(inFeed, onTop));
  }

  private static double grown(Line line, double onTop, double times) {
    double withLine = line.onTop().kgPer100();
    return onTop - withLine + withLine * times;
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
