package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import java.util.List;
import java.util.Optional;

/** What rows of a feed bring, put together by the line that they come from. */
final class RowsByLine {
  private final ComputedFeed feed;
  private final List<Line> lines;
  private final Row[] rows;

  /** What one kg of its line in the feed brings of each row. */
  private final double[] share;

  /** The same with the handling overage of premixes and of the line. */
  private final double[] most;

  RowsByLine(ComputedFeed feed) {
    this.feed = feed;
    this.lines = feed.recipe().lines();
    this.rows = feed.everyRow().toArray(new Row[0]);
    this.share = new double[rows.length];
    this.most = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      ExplodedLine one = rows[i].leaf().weighed(1, 1);
      Line line = rows[i].line();
      double inFeed = line.share().kgPer100();
      double onTop = inFeed > 0 ? line.onTop().kgPer100() / inFeed : 0;
      share[i] = one.kg();
      most[i] = one.richest() * (1 + onTop);
    }
  }

  /** Of lines at zero too; nobody writes to it. */
  Row[] rows() {
    return rows;
  }

  double[] share() {
    return share;
  }

  double[] most() {
    return most;
  }

  /** How many lines there are. */
  int lines() {
    return lines.size();
  }

  /** By row, from what a kg of each row brings to what a kg of its line does. */
  double[] perRow(double[] perKg, Scenario mass) {
    double[] per = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      per[i] = perKg[i] * (mass == Scenario.RICHEST ? most[i] : share[i]);
    }
    return per;
  }

  /**
   * From what a kg of each line in the feed brings, to what a point of its share as written does:
   * what it holds more for stability is taken from the rest.
   *
   * @param perRow of a kg of the line of each row
   */
  double[] byLine(double[] perRow) {
    double[] perKg = new double[lines.size()];
    for (int i = 0; i < rows.length; i++) {
      perKg[rows[i].line().index()] += perRow[i];
    }
    Optional<Line> rest = feed.recipe().rest();
    double ofRest = rest.isPresent() ? perKg[rest.get().index()] : 0;
    double[] perPoint = new double[perKg.length];
    for (int i = 0; i < perPoint.length; i++) {
      Line line = lines.get(i);
      double designed = line.designed().kgPer100();
      double times = designed > 0 && !line.rest() ? line.share().kgPer100() / designed : 1;
      perPoint[i] = times * perKg[i] - (times - 1) * ofRest;
    }
    return perPoint;
  }
}
