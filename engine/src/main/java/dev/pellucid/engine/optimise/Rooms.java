package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.weighing.Reweighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is left to all that a feed must keep, near an answer, as sums over its free lines: as the
 * shares are written, and as a batch of them is weighed. What bends lies a little below these
 * planes; {@link #settle} takes that off where it counts.
 */
final class Rooms {
  /** By how much, as a part of its size, a room may be missed and count as kept. */
  private static final double STILL = 1e-10;

  private static final double TINY = 1e-15;

  final Answer.Found found;
  final List<Free> free;
  private final Optional<Reweighed> scales;

  /** For each row what a point of each free line adds, and what it is with none of them. */
  final double[][] rows;

  private final double[] none;

  /** How many rows each thing to keep has. */
  final int[] counts;

  /**
   * What must be left to it as written, and as weighed; without end below where nothing is asked.
   */
  final double[] asked;

  final double[] askedWeighed;

  /** What the fixed lines add to it when they are weighed. */
  private final double[] weighedMore;

  /** How much of it is noise. */
  final double[] still;

  private final Slope cost;

  /**
   * @param scales on which the batch is weighed; none where that is not asked
   */
  Rooms(Answer.Found found, Optional<Reweighed> scales) {
    this.found = found;
    this.free = found.task().free();
    this.scales = scales;
    Slopes slopes = new Slopes(found.feed());
    List<Tightened> kept = found.task().kept();
    List<Slope> all = new ArrayList<>();
    counts = new int[kept.size()];
    for (int k = 0; k < counts.length; k++) {
      List<Slope> some = kept.get(k).rooms(slopes);
      counts[k] = some.size();
      all.addAll(some);
    }
    int count = all.size();
    rows = new double[count][free.size()];
    none = new double[count];
    asked = new double[count];
    askedWeighed = new double[count];
    weighedMore = new double[count];
    still = new double[count];
    Slope money = slopes.money();
    Slope bagged = slopes.bagged();
    cost = money.minus(money.now() / bagged.now(), bagged);
    for (int r = 0; r < count; r++) {
      lay(r, all.get(r));
    }
    weighed(all);
  }

  private static List<Slope> all(Task task, Slopes slopes) {
    List<Slope> all = new ArrayList<>();
    for (Tightened one : task.kept()) {
      all.addAll(one.rooms(slopes));
    }
    return all;
  }

  private void lay(int r, Slope room) {
    double there = 0;
    double size = TINY;
    for (int i = 0; i < free.size(); i++) {
      rows[r][i] = room.perPoint()[free.get(i).line().index()];
      there += rows[r][i] * found.shares()[i];
      size += Math.abs(rows[r][i] * found.shares()[i]);
    }
    none[r] = room.now() - there;
    still[r] = STILL * size;
    askedWeighed[r] = Double.NEGATIVE_INFINITY;
  }

  /** Limits alone are held against the batch as weighed, and no closer than as it is today. */
  private void weighed(List<Slope> all) {
    if (scales.isEmpty()) {
      return;
    }
    double[] off = off();
    int r = 0;
    Slopes today = new Slopes(found.task().feed());
    for (Tightened one : found.task().kept()) {
      boolean limit = one.of().isLimit();
      for (Slope now : one.rooms(today)) {
        boolean kept = now.now() >= -still[r];
        double there = now.now();
        for (Line line : found.feed().recipe().lines()) {
          double written = line.designed().kgPer100();
          double rounded = scales.get().points(line, written) - written;
          there += now.perPoint()[line.index()] * rounded;
          weighedMore[r] += all.get(r).perPoint()[line.index()] * off[line.index()];
        }
        askedWeighed[r] = limit ? kept ? Math.min(0, there) : 0 : Double.NEGATIVE_INFINITY;
        r++;
      }
    }
  }

  /** By how much each line that is not free is off when it is weighed. */
  private double[] off() {
    List<Line> lines = found.feed().recipe().lines();
    double[] off = new double[lines.size()];
    for (Line line : lines) {
      double written = line.designed().kgPer100();
      off[line.index()] = scales.orElseThrow().points(line, written) - written;
    }
    for (Free one : free) {
      off[one.line().index()] = 0;
    }
    return off;
  }

  /** What a point that goes from one line to another takes from a row at most, by half of it. */
  double spoilt(int r) {
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < free.size(); i++) {
      if (free.get(i).high() > free.get(i).low()) {
        most = Math.max(most, rows[r][i]);
        least = Math.min(least, rows[r][i]);
      }
    }
    return most > least ? (most - least) * free.size() / 4 : 0;
  }

  /** What is left to a row. */
  double at(int r, double[] shares) {
    double sum = none[r];
    for (int i = 0; i < shares.length; i++) {
      sum += rows[r][i] * shares[i];
    }
    return sum;
  }

  /** What is left to it as weighed. */
  double weighedAt(int r, double[] weighed) {
    return at(r, weighed) + weighedMore[r];
  }

  /** What a free line of this share is weighed as. */
  double weighed(int i, double share) {
    return scales.isPresent() ? scales.get().points(free.get(i).line(), share) : share;
  }

  boolean isWeighed() {
    return scales.isPresent();
  }

  /** Money for 100 kg of recipe less what it brings at the cost of the answer. */
  double cost(int i) {
    return cost.perPoint()[free.get(i).line().index()];
  }

  /**
   * Whether a feed of these shares keeps all in fact; where it does not, what the planes lie too
   * high is asked of them from now on.
   */
  boolean settle(double[] shares) {
    Optional<ComputedFeed> feed = Optimiser.feed(found.task(), shares);
    if (feed.isEmpty()) {
      return true;
    }
    List<Slope> real = all(found.task(), new Slopes(feed.get()));
    boolean keeps = true;
    for (int r = 0; r < rows.length && r < real.size(); r++) {
      double room = real.get(r).now();
      if (room < -still[r]) {
        keeps = false;
        asked[r] = Math.max(asked[r], at(r, shares) - room + still[r]);
      }
    }
    return keeps;
  }
}
