package dev.pellucid.engine.check;

import dev.pellucid.engine.check.HalfPlanes.Point;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.measure.Closeness;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The smallest change of one line or two that meets some limits, keeps what is kept and makes no
 * other broken limit worse. A feed is nearly linear in its shares: the change is found on a feed
 * that is, corrected twice by what it really makes, and rounded to a figure that a person writes;
 * then it is left to a proof. One that leaves the label as it is goes before.
 */
final class Search {
  private static final int CORRECTIONS = 2;
  private static final int NEAR = 2;

  /** So many roundings of a change are proven, and so many changes are tried. */
  private static final int ROUNDINGS = 3;

  private static final int CHANGES = 6;

  private final Moves moves;
  private final List<Limit> limits = new ArrayList<>();

  /** What each limit must have left after the change. */
  private final List<Double> least = new ArrayList<>();

  private final double[] rooms;
  private final double[][] slopes;
  private final Function<Change, Optional<Change>> proof;
  private final int meets;

  /** A way to move: so many points more of a line, and less of another; one or two of these. */
  private record Way(List<Line> up, List<Line> down) {
    int written() {
      int lines = 0;
      for (int i = 0; i < up.size(); i++) {
        lines += (up.get(i).rest() ? 0 : 1) + (down.get(i).rest() ? 0 : 1);
      }
      return lines;
    }
  }

  private record Candidate(Way way, Point point) {
    double size() {
      return point.size() * way.written() / way.up().size();
    }
  }

  /**
   * @param targets what is to be met
   * @param before how the feed stands with its limits
   */
  Search(
      Moves moves,
      List<Limit> targets,
      List<LimitStatus> before,
      Function<Change, Optional<Change>> proof) {
    this.moves = moves;
    this.proof = proof;
    this.meets = targets.size();
    for (Limit target : targets) {
      limits.add(target);
      least.add(0.0);
    }
    for (LimitStatus status : before) {
      boolean other = !targets.contains(status.limit());
      if (other && status.state().isJudged()) {
        limits.add(status.limit());
        double room = status.verdict().room();
        least.add(status.state().isKept() ? Math.min(0, room) : room);
      }
    }
    this.rooms = new double[limits.size()];
    this.slopes = new double[limits.size()][moves.size()];
    for (int i = 0; i < rooms.length; i++) {
      rooms[i] = moves.room(limits.get(i));
      for (Line line : moves.free()) {
        slopes[i][line.index()] = moves.slope(line, limits.get(i));
      }
    }
  }

  /** The smallest change of one line against the rest. */
  Optional<Change> ofOneLine() {
    List<Candidate> found = new ArrayList<>();
    Optional<Line> rest = moves.rest();
    for (Line line : rest.isPresent() ? moves.free() : List.<Line>of()) {
      look(new Way(List.of(line), List.of(rest.get())), found);
    }
    return proven(found);
  }

  /** The smallest change of two lines, against the rest or each other. */
  Optional<Change> ofTwoLines() {
    List<Candidate> found = new ArrayList<>();
    Optional<Line> rest = moves.rest();
    List<Line> free = moves.free();
    for (int i = 0; i < free.size(); i++) {
      for (int j = i + 1; j < free.size(); j++) {
        look(new Way(List.of(free.get(i)), List.of(free.get(j))), found);
        if (rest.isPresent()) {
          Line with = rest.get();
          look(new Way(List.of(free.get(i), free.get(j)), List.of(with, with)), found);
        }
      }
    }
    return proven(found);
  }

  private void look(Way way, List<Candidate> found) {
    if (mayHelp(way)) {
      planes(way, rooms, new Point(0, 0))
          .nearest(100)
          .ifPresent(point -> found.add(new Candidate(way, point)));
    }
  }

  /** Whether it does something to each target. */
  private boolean mayHelp(Way way) {
    for (int i = 0; i < meets; i++) {
      boolean some = false;
      for (int k = 0; k < way.up().size(); k++) {
        some |= slope(i, way, k) != 0;
      }
      if (!some) {
        return false;
      }
    }
    return true;
  }

  private double slope(int limit, Way way, int k) {
    return k < way.up().size()
        ? slopes[limit][way.up().get(k).index()] - slopes[limit][way.down().get(k).index()]
        : 0;
  }

  /**
   * What a way must keep.
   *
   * @param now what each limit has left at a point
   */
  private HalfPlanes planes(Way way, double[] now, Point at) {
    HalfPlanes planes = new HalfPlanes();
    for (int i = 0; i < now.length; i++) {
      double x = slope(i, way, 0);
      double y = slope(i, way, 1);
      if (x != 0 || y != 0) {
        planes.add(x, y, least.get(i) - now[i] + x * at.x() + y * at.y());
      }
    }
    if (way.up().size() == 1) {
      planes.add(0, 1, 0);
      planes.add(0, -1, 0);
    }
    for (int line = 0; line < moves.size(); line++) {
      double x = part(way, 0, line);
      double y = part(way, 1, line);
      if (x != 0 || y != 0) {
        planes.add(-x, -y, -moves.up(moves.line(line)));
        planes.add(x, y, -moves.down(moves.line(line)));
      }
    }
    return planes;
  }

  private static double part(Way way, int k, int line) {
    return k < way.up().size()
        ? (way.up().get(k).index() == line ? 1 : 0) - (way.down().get(k).index() == line ? 1 : 0)
        : 0;
  }

  private Optional<Change> proven(List<Candidate> found) {
    found.sort(Comparator.comparingDouble(Candidate::size));
    Optional<Change> relabelling = Optional.empty();
    for (Candidate one : found.subList(0, Math.min(CHANGES, found.size()))) {
      Optional<Change> change = proven(one);
      if (change.isPresent() && change.get().relabels().isEmpty()) {
        return change;
      }
      relabelling = relabelling.isPresent() ? relabelling : change;
    }
    return relabelling;
  }

  private Optional<Change> proven(Candidate found) {
    Way way = found.way();
    Point at = found.point();
    HalfPlanes planes = planes(way, rooms, new Point(0, 0));
    for (int i = 0; i < CORRECTIONS; i++) {
      Optional<Readings> there = moves.moved(points(way, at)).map(Readings::new);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      planes = planes(way, rooms(there.get()), at);
      Optional<Point> next = planes.nearest(100);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      at = next.get();
    }
    int decimals = at.size() >= 0.5 ? 1 : at.size() >= 0.05 ? 2 : 3;
    for (int most = decimals + 1; decimals <= most; decimals++) {
      for (Change change : rounded(way, at, planes, decimals)) {
        Optional<Change> proven = proof.apply(change);
        if (proven.isPresent()) {
          return proven;
        }
      }
    }
    return Optional.empty();
  }

  private double[] rooms(Readings feed) {
    double[] now = new double[limits.size()];
    for (int i = 0; i < now.length; i++) {
      now[i] = Moves.room(feed, limits.get(i));
    }
    return now;
  }

  private double[] points(Way way, Point at) {
    double[] points = new double[moves.size()];
    for (int line = 0; line < points.length; line++) {
      points[line] = part(way, 0, line) * at.x() + part(way, 1, line) * at.y();
    }
    return points;
  }

  /** What lies near a point and keeps all, the smallest first. */
  private List<Change> rounded(Way way, Point at, HalfPlanes planes, int decimals) {
    BigDecimal[] units = {unit(way, 0, decimals), unit(way, 1, decimals)};
    double stepX = units[0].doubleValue();
    double stepY = units[1].doubleValue();
    double wide = Math.min(stepX, stepY);
    long x = Math.round(at.x() / stepX);
    long y = Math.round(at.y() / stepY);
    int near = way.up().size() == 1 ? 0 : NEAR;
    List<Point> points = new ArrayList<>();
    for (long i = x - NEAR; i <= x + NEAR; i++) {
      for (long j = y - near; j <= y + near; j++) {
        if ((i != 0 || j != 0)
            && planes.holds((double) i * stepX, (double) j * stepY, Closeness.PART)) {
          points.add(new Point((double) i, (double) j));
        }
      }
    }
    points.sort(
        Comparator.comparingDouble(
            point -> new Point(point.x() * (stepX / wide), point.y() * (stepY / wide)).size()));
    List<Change> changes = new ArrayList<>();
    for (Point point : points.subList(0, Math.min(ROUNDINGS, points.size()))) {
      changes.add(change(way, point, units));
    }
    return changes;
  }

  /** What a way moves by: a figure that a person writes, and whole steps of lines that have one. */
  private static BigDecimal unit(Way way, int k, int decimals) {
    BigDecimal unit = BigDecimal.ONE.movePointLeft(decimals);
    return k >= way.up().size() ? unit : inSteps(inSteps(unit, way.up().get(k)), way.down().get(k));
  }

  private static BigDecimal inSteps(BigDecimal unit, Line line) {
    return line.step().isPresent() ? together(unit, line.step().get().share().percent()) : unit;
  }

  /** The least that is a whole multiple of both. */
  private static BigDecimal together(BigDecimal one, BigDecimal other) {
    int places = Math.max(0, Math.max(one.scale(), other.scale()));
    BigInteger a = one.movePointRight(places).toBigIntegerExact();
    BigInteger b = other.movePointRight(places).toBigIntegerExact();
    return new BigDecimal(a.divide(a.gcd(b)).multiply(b), places);
  }

  private Change change(Way way, Point steps, BigDecimal... units) {
    List<Change.Moved> moved = new ArrayList<>();
    for (int line = 0; line < moves.size(); line++) {
      BigDecimal amount = BigDecimal.ZERO;
      for (int k = 0; k < units.length; k++) {
        long times = (long) (part(way, k, line) * (k == 0 ? steps.x() : steps.y()));
        amount = amount.add(units[k].multiply(BigDecimal.valueOf(times)));
      }
      if (amount.signum() != 0) {
        moved.add(new Change.Moved(moves.line(line), amount));
      }
    }
    return new Change(moved, meets, List.of());
  }
}
