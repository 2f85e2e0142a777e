package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import java.util.ArrayList;
import java.util.List;

/**
 * What a kg in the bags costs at least where two lines change, or three, and all others stay: of
 * two what one gains the other gives, so all that is kept leaves a stretch of points; of three it
 * leaves a polygon, which is cut by one line after the other. The cost is least at an end or a
 * corner.
 *
 * <p>What bends is taken as the planes that touch it at the feed as written and at the answer. They
 * cut off nothing that keeps it, so no change costs less than is said here; whether one costs that
 * little is for the solver to say. Steps are left out, and what may be none may be anything below
 * its least share too, for the same reason.
 */
final class FewLines {
  private static final double NOISE = 1e-9;

  private final Task task;
  private final double[] written;

  /** Coefficients of the free lines for each thing to keep, and what is left to it today. */
  private final List<double[]> rows = new ArrayList<>();

  private final List<Double> rooms = new ArrayList<>();
  private final double[] money;
  private final double[] bagged;
  private final double moneyNow;
  private final double baggedNow;

  FewLines(Answer.Found found) {
    this.task = found.task();
    int n = task.free().size();
    this.written = new double[n];
    for (int i = 0; i < n; i++) {
      written[i] = task.free().get(i).written();
    }
    Slopes today = new Slopes(task.feed());
    for (Tightened one : task.kept()) {
      for (Slope room : one.rooms(today)) {
        add(ofFree(room), room.now());
      }
    }
    for (int r = 0; r < found.rows().size(); r++) {
      if (found.rows().get(r).bends()) {
        add(found.program().constraints().get(r));
      }
    }
    Slope cost = today.money();
    Slope bags = today.bagged();
    this.money = ofFree(cost);
    this.bagged = ofFree(bags);
    this.moneyNow = cost.now();
    this.baggedNow = bags.now();
  }

  private double[] ofFree(Slope slope) {
    double[] row = new double[task.free().size()];
    for (int i = 0; i < row.length; i++) {
      row[i] = slope.perPoint()[task.free().get(i).line().index()];
    }
    return row;
  }

  private void add(Constraint plane) {
    double[] row = new double[written.length];
    double room = -plane.low();
    for (int i = 0; i < row.length; i++) {
      row[i] = plane.coefficient(i);
      room += row[i] * written[i];
    }
    add(row, room);
  }

  /** With what is noise of it, so that what is just kept is no hindrance. */
  private void add(double[] row, double room) {
    double size = 0;
    for (int i = 0; i < row.length; i++) {
      size += Math.abs(row[i] * written[i]);
    }
    rows.add(row);
    rooms.add(room + NOISE * size);
  }

  /** By how much a line may fall or rise; what may be left out may fall to nothing. */
  private double low(int i) {
    Free one = task.free().get(i);
    double least = one.orNone() ? Math.min(0, one.low()) : one.low();
    return Math.max(least - written[i], -task.mostMoved());
  }

  private double high(int i) {
    return Math.min(task.free().get(i).high() - written[i], task.mostMoved());
  }

  /** What a point of a line costs more or less than it brings, at the cost of the feed. */
  double differs(int i) {
    return Math.abs(money[i] - moneyNow / baggedNow * bagged[i]);
  }

  /** What a kg costs at least where these two change; without end where nothing is kept then. */
  double least(int one, int other) {
    double from = Math.max(low(one), -high(other));
    double to = Math.min(high(one), -low(other));
    for (int r = 0; r < rows.size() && from <= to; r++) {
      double per = rows.get(r)[one] - rows.get(r)[other];
      double room = rooms.get(r);
      if (per > 0) {
        from = Math.max(from, -room / per);
      } else if (per < 0) {
        to = Math.min(to, room / -per);
      } else if (room < 0) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return from > to + NOISE
        ? Double.POSITIVE_INFINITY
        : Math.min(cost(one, other, other, from, 0), cost(one, other, other, to, 0));
  }

  /** The same of three. */
  double least(int one, int other, int third) {
    List<double[]> left = new ArrayList<>();
    left.add(new double[] {low(one), low(other)});
    left.add(new double[] {high(one), low(other)});
    left.add(new double[] {high(one), high(other)});
    left.add(new double[] {low(one), high(other)});
    // The third gives what the others gain, and takes what they give.
    left = cut(left, 1, 1, high(third));
    left = cut(left, -1, -1, -low(third));
    for (int r = 0; r < rows.size() && !left.isEmpty(); r++) {
      double[] row = rows.get(r);
      left = cut(left, row[one] - row[third], row[other] - row[third], rooms.get(r));
    }
    double least = Double.POSITIVE_INFINITY;
    for (double[] corner : left) {
      least = Math.min(least, cost(one, other, third, corner[0], corner[1]));
    }
    return least;
  }

  private double cost(int one, int other, int third, double x, double y) {
    double more = moneyNow + x * (money[one] - money[third]) + y * (money[other] - money[third]);
    double bags =
        baggedNow + x * (bagged[one] - bagged[third]) + y * (bagged[other] - bagged[third]);
    return more / bags;
  }

  /** What is left of a polygon where {@code a x + b y + room >= 0}. */
  private static List<double[]> cut(List<double[]> corners, double a, double b, double room) {
    List<double[]> left = new ArrayList<>(corners.size() + 1);
    for (int i = 0; i < corners.size(); i++) {
      double[] here = corners.get(i);
      double[] next = corners.get((i + 1) % corners.size());
      double at = a * here[0] + b * here[1] + room;
      double then = a * next[0] + b * next[1] + room;
      if (at >= 0) {
        left.add(here);
      }
      if (at >= 0 != then >= 0) {
        double part = at / (at - then);
        left.add(
            new double[] {
              here[0] + part * (next[0] - here[0]), here[1] + part * (next[1] - here[1])
            });
      }
    }
    return left;
  }
}
