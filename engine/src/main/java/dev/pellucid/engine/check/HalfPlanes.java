package dev.pellucid.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two moves x and y, and what they must keep: {@code a x + b y >= least}, any number of times. It
 * answers which of the points that keep all is the nearest to nothing moved, by |x| + |y|: a linear
 * program in two variables, solved by cutting a square by one line after the other.
 */
final class HalfPlanes {
  private static final double CLOSE = 1e-12;

  /** Each {@code a, b, least}, scaled so that its a and b are of the size of one. */
  private final List<double[]> rows = new ArrayList<>();

  /** A pair of moves. */
  record Point(double x, double y) {
    double size() {
      return Math.abs(x) + Math.abs(y);
    }
  }

  void add(double a, double b, double least) {
    double size = Math.max(Math.abs(a), Math.abs(b));
    rows.add(
        size == 0 ? new double[] {0, 0, least} : new double[] {a / size, b / size, least / size});
  }

  boolean holds(double x, double y, double slack) {
    for (double[] row : rows) {
      if (row[0] * x + row[1] * y < row[2] - slack) {
        return false;
      }
    }
    return true;
  }

  /** The nearest that keeps all, x and y no further than so much either way. */
  Optional<Point> nearest(double most) {
    Point best = new Point(Double.POSITIVE_INFINITY, 0);
    for (int quarter = 0; quarter < 4; quarter++) {
      double x = quarter % 2 == 0 ? most : -most;
      double y = quarter < 2 ? most : -most;
      for (double[] corner : cut(x, y)) {
        Point point = new Point(corner[0], corner[1]);
        if (point.size() < best.size()) {
          best = point;
        }
      }
    }
    return Double.isInfinite(best.size()) ? Optional.empty() : Optional.of(best);
  }

  /** The corners of what is left of the quarter between nothing and x and y. */
  private List<double[]> cut(double x, double y) {
    List<double[]> left = new ArrayList<>();
    left.add(new double[] {0, 0});
    left.add(new double[] {x, 0});
    left.add(new double[] {x, y});
    left.add(new double[] {0, y});
    for (double[] row : rows) {
      left = cut(left, row);
      if (left.isEmpty()) {
        return left;
      }
    }
    return left;
  }

  private static List<double[]> cut(List<double[]> corners, double[] row) {
    List<double[]> left = new ArrayList<>(corners.size() + 1);
    for (int i = 0; i < corners.size(); i++) {
      double[] here = corners.get(i);
      double[] next = corners.get((i + 1) % corners.size());
      double room = row[0] * here[0] + row[1] * here[1] - row[2];
      double roomNext = row[0] * next[0] + row[1] * next[1] - row[2];
      if (room >= -CLOSE) {
        left.add(here);
      }
      if (room >= -CLOSE != roomNext >= -CLOSE && room != roomNext) {
        double part = room / (room - roomNext);
        left.add(
            new double[] {
              here[0] + part * (next[0] - here[0]), here[1] + part * (next[1] - here[1])
            });
      }
    }
    return left;
  }
}
