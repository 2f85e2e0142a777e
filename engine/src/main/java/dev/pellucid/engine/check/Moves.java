package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of a feed whose shares are free, how far each may move, and what one point of it does
 * to a limit. A line moves within its {@code within}; one that tells none by half, since it is
 * there for a reason of its own, and up by half a point where that is more. Premixes and rework
 * stay as they are. Moves are in points, kg per 100 kg of recipe, by the index of the line.
 */
final class Moves {
  private static final double PROBE = 0.02;

  /** A small line, a salt or an amino acid, may always grow by as many points. */
  private static final double SMALL = 0.5;

  private final ComputedFeed feed;
  private final List<Line> lines;
  private final Optional<Line> rest;
  private final List<Line> free = new ArrayList<>();
  private final Readings written;
  private final List<Optional<Readings>> probed = new ArrayList<>();

  Moves(ComputedFeed feed) {
    this.feed = feed;
    this.lines = feed.recipe().lines();
    this.rest = feed.recipe().rest();
    this.written = new Readings(feed);
    for (Line line : lines) {
      boolean moves = !line.rest() && line.material().single().isPresent() && mayMove(line);
      Optional<Readings> probe = moves ? probe(line) : Optional.empty();
      probed.add(probe);
      if (probe.isPresent()) {
        free.add(line);
      }
    }
  }

  /**
   * Whether a small change of it may be sound: a line that was left out is taken up by a person,
   * and one that is off its step is first brought back to it.
   */
  private static boolean mayMove(Line line) {
    boolean left = !line.isTaken() && (line.within().isEmpty() || line.within().get().low() > 0);
    return !left && line.keepsStep();
  }

  private Optional<Readings> probe(Line line) {
    double[] points = new double[lines.size()];
    points[line.index()] = PROBE;
    rest.ifPresent(it -> points[it.index()] = -PROBE);
    return moved(points).map(Readings::new);
  }

  /** The lines that may move against the rest. */
  List<Line> free() {
    return free;
  }

  Optional<Line> rest() {
    return rest;
  }

  Line line(int index) {
    return lines.get(index);
  }

  int size() {
    return lines.size();
  }

  /** What a limit has left as the feed is written; below zero where it is broken. */
  double room(Limit limit) {
    return room(written, limit);
  }

  static double room(Readings feed, Limit limit) {
    return Judge.verdict(feed, limit).room();
  }

  /** What one point of a line, taken from the rest, adds to what a limit has left. */
  double slope(Line line, Limit limit) {
    return line.rest()
        ? 0
        : (room(probed.get(line.index()).orElseThrow(), limit) - room(limit)) / PROBE;
  }

  double up(Line line) {
    double most =
        line.within()
            .map(within -> within.high() * 100)
            .orElse(line.rest() ? 100.0 : Math.max(points(line) * 1.5, points(line) + SMALL));
    return Math.max(0, most - points(line));
  }

  double down(Line line) {
    double least =
        line.within()
            .map(within -> within.low() * 100)
            .orElse(line.rest() ? 0.0 : points(line) / 2);
    return Math.max(0, points(line) - least);
  }

  static double points(Line line) {
    return line.designed().kgPer100();
  }

  /** The feed with its lines moved; empty where one would be less than nothing. */
  Optional<ComputedFeed> moved(double[] points) {
    return Weighing.moved(feed, points).flatMap(it -> feed.weighed(it).feed());
  }
}
