package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Variable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * Frames a task as a linear program around a feed. What bends is laid down as the plane that
 * touches it there; planes of earlier feeds stay, since none of them cuts off what keeps it.
 *
 * <p>Cost per kg is one sum over another, {@code C / F}. Where {@code p} is the cost per kg of the
 * feed that it is framed around, the least of {@code C - p F} is below zero exactly where some
 * shares cost less than {@code p}; solved again with theirs until it is zero, they cost least (W.
 * Dinkelbach, On nonlinear fractional programming, Management Science 13, 1967).
 */
final class Framing {
  /** Planes whose slopes differ by less, as a part of the greatest, are one. */
  private static final double ALIKE = 1e-6;

  private static final double TINY = 1e-15;

  private final Task task;
  private final boolean moves;
  private final int size;
  private final List<Constraint> planes = new ArrayList<>();
  private final List<Requirement> ofPlanes = new ArrayList<>();

  Framing(Task task) {
    this.task = task;
    this.moves = task.aim() == Aim.CHANGE || Double.isFinite(task.mostMoved());
    this.size = moves ? 2 * task.free().size() : task.free().size();
  }

  /**
   * @param shares of the free lines in the feed
   */
  Framed around(ComputedFeed feed, double[] shares) {
    Slopes slopes = new Slopes(feed);
    Slope money = slopes.money();
    Slope bagged = slopes.bagged();
    double perKg = money.now() / bagged.now();
    List<Constraint> constraints = new ArrayList<>();
    List<Requirement> rows = new ArrayList<>();
    IdentityHashMap<Requirement, Integer> newest = new IdentityHashMap<>();
    double missed = 0;
    for (Tightened tightened : task.kept()) {
      Requirement one = tightened.of();
      newest.put(one, rows.size());
      for (Slope room : tightened.rooms(slopes)) {
        Constraint constraint = constraint(room, shares);
        missed = Math.max(missed, -room.now() / size(constraint, shares));
        constraints.add(constraint);
        rows.add(one);
        if (one.bends()) {
          planes.add(constraint);
          ofPlanes.add(one);
        }
      }
    }
    int older = planes.size() - bending(rows);
    older(older, newest, constraints, rows);
    constraints.add(total());
    if (moves) {
      moves(constraints);
    }
    return new Framed(
        new LinearProgram(variables(money.minus(perKg, bagged)), constraints),
        rows,
        perKg,
        missed,
        bagged.now());
  }

  /**
   * Planes of earlier feeds. Those that are all but the same as the newest are left out: where such
   * cross is settled by rounding alone. All rooms of one thing stay together.
   */
  private void older(
      int count,
      IdentityHashMap<Requirement, Integer> newest,
      List<Constraint> constraints,
      List<Requirement> rows) {
    int current = rows.size();
    int i = 0;
    while (i < count) {
      Requirement one = ofPlanes.get(i);
      int start = newest.getOrDefault(one, 0);
      int size = 0;
      boolean same = true;
      while (start + size < current && rows.get(start + size) == one) {
        same &= isSame(planes.get(i + size), constraints.get(start + size));
        size++;
      }
      if (!same) {
        constraints.addAll(planes.subList(i, i + size));
        rows.addAll(ofPlanes.subList(i, i + size));
      }
      i += size;
    }
  }

  private boolean isSame(Constraint older, Constraint newest) {
    double most = TINY;
    double apart = 0;
    for (int i = 0; i < task.free().size(); i++) {
      most = Math.max(most, Math.abs(newest.coefficient(i)));
      apart = Math.max(apart, Math.abs(newest.coefficient(i) - older.coefficient(i)));
    }
    return apart <= ALIKE * most;
  }

  /** How large what adds up to a room is. */
  private static double size(Constraint constraint, double[] shares) {
    double size = TINY;
    for (int i = 0; i < shares.length; i++) {
      size += Math.abs(constraint.coefficient(i) * shares[i]);
    }
    return size;
  }

  private static int bending(List<Requirement> rows) {
    int bending = 0;
    for (Requirement one : rows) {
      bending += one.bends() ? 1 : 0;
    }
    return bending;
  }

  private Constraint constraint(Slope room, double[] shares) {
    double[] row = new double[size];
    double there = 0;
    for (int i = 0; i < task.free().size(); i++) {
      row[i] = room.perPoint()[task.free().get(i).line().index()];
      there += row[i] * shares[i];
    }
    return Constraint.of(row, there - room.now(), Double.POSITIVE_INFINITY);
  }

  /** What the free lines come to together stays. */
  private Constraint total() {
    double[] row = new double[size];
    Arrays.fill(row, 0, task.free().size(), 1);
    double sum = 0;
    for (Free one : task.free()) {
      sum += one.written();
    }
    return Constraint.of(row, sum, sum);
  }

  /** The second half of the variables is by how much each line rises, and what falls rises too. */
  private void moves(List<Constraint> constraints) {
    int lines = task.free().size();
    for (int i = 0; i < lines; i++) {
      double[] row = new double[size];
      row[i] = -1;
      row[lines + i] = 1;
      constraints.add(Constraint.of(row, -task.free().get(i).written(), Double.POSITIVE_INFINITY));
    }
    double[] sum = new double[size];
    Arrays.fill(sum, lines, size, 1);
    constraints.add(Constraint.of(sum, 0, task.mostMoved()));
  }

  private List<Variable> variables(Slope cost) {
    List<Variable> variables = new ArrayList<>(size);
    boolean ofCost = task.aim() == Aim.COST;
    for (Free one : task.free()) {
      double perPoint = ofCost ? cost.perPoint()[one.line().index()] : 0;
      variables.add(new Variable(one.low(), one.high(), perPoint, one.orNone(), one.step()));
    }
    for (int i = task.free().size(); i < size; i++) {
      variables.add(Variable.of(0, 100, ofCost ? 0 : 1));
    }
    return variables;
  }
}
