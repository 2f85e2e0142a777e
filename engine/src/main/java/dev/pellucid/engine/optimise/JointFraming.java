package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Variable;
import dev.pellucid.engine.optimise.JointTask.Made;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.optimise.JointTask.Until;
import java.util.ArrayList;
import java.util.List;

/**
 * Frames several feeds as one linear program around what they are: the rows of each stand side by
 * side, without those that nothing can break; rows of what is short go over all. What a feed costs
 * and takes for all its bags is a quotient; it is laid down as the plane that touches it there, and
 * framed anew around the answer.
 */
final class JointFraming {
  private static final double TINY = 1e-12;

  private final JointTask task;
  private final List<Framing> framings = new ArrayList<>();

  JointFraming(JointTask task) {
    this.task = task;
    for (Made made : task.feeds()) {
      framings.add(new Framing(made.task()));
    }
  }

  /**
   * One program for all.
   *
   * @param offsets where the variables of each feed begin; last where those of what is short do
   * @param firstScarce the row that says how much there is of the first thing that is short
   * @param cost money for all, of the feeds it was framed around
   * @param missed by how much these miss what they miss most, as a part of its size
   */
  record Joint(
      LinearProgram program,
      List<Framed> framed,
      List<Integer> offsets,
      int firstScarce,
      double cost,
      double missed) {
    Joint {
      framed = List.copyOf(framed);
      offsets = List.copyOf(offsets);
    }
  }

  /** One feed with its shares, and where its variables begin. */
  private static final class Around {
    private final Made made;
    private final Framed framed;
    private final Slopes slopes;
    private final double[] shares;
    private final int offset;

    Around(Made made, Framed framed, Slopes slopes, double[] shares, int offset) {
      this.made = made;
      this.framed = framed;
      this.slopes = slopes;
      this.shares = shares;
      this.offset = offset;
    }

    Framed framed() {
      return framed;
    }

    /** A sum over lines for all that is made of it. */
    Slope all(Slope sum) {
      return made.all(slopes, sum);
    }
  }

  /**
   * @param feeds as they are with the shares
   * @param shares of the free lines of each
   */
  Joint around(List<ComputedFeed> feeds, List<double[]> shares) {
    List<Around> all = new ArrayList<>();
    List<Integer> offsets = new ArrayList<>();
    int size = 0;
    for (int f = 0; f < feeds.size(); f++) {
      double[] its = shares.get(f);
      Framed framed = Reachable.of(framings.get(f).around(feeds.get(f), its), its.length);
      Slopes slopes = new Slopes(feeds.get(f));
      all.add(new Around(task.feeds().get(f), framed, slopes, its, size));
      offsets.add(size);
      size += framed.program().variables().size();
    }
    offsets.add(size);
    return joined(all, offsets, size + 2 * task.scarce().size());
  }

  private Joint joined(List<Around> all, List<Integer> offsets, int size) {
    List<Variable> variables = new ArrayList<>();
    List<Constraint> constraints = new ArrayList<>();
    double cost = 0;
    double missed = 0;
    for (Around one : all) {
      Slope money = one.all(one.slopes.money());
      cost += money.now();
      missed = Math.max(missed, one.framed().missed());
      variables(one, money, variables);
      for (Constraint row : one.framed().program().constraints()) {
        constraints.add(wider(row, one.offset, size));
      }
    }
    for (Scarce scarce : task.scarce()) {
      boolean open = Double.isFinite(scarce.elsewhere());
      variables.add(Variable.of(0, Double.POSITIVE_INFINITY, 0));
      variables.add(
          Variable.of(0, open ? Double.POSITIVE_INFINITY : 0, open ? scarce.elsewhere() : 0));
    }
    int first = constraints.size();
    for (int s = 0; s < task.scarce().size(); s++) {
      constraints.add(there(s, size));
    }
    for (int s = 0; s < task.scarce().size(); s++) {
      missed = Math.max(missed, taken(all, s, size, constraints));
    }
    return new Joint(
        new LinearProgram(variables, constraints),
        all.stream().map(Around::framed).toList(),
        offsets,
        first,
        cost,
        missed);
  }

  private static void variables(Around one, Slope money, List<Variable> variables) {
    List<Variable> own = one.framed().program().variables();
    List<Free> free = one.made.task().free();
    for (int i = 0; i < own.size(); i++) {
      double cost = i < free.size() ? money.perPoint()[free.get(i).line().index()] : 0;
      variables.add(own.get(i).at(cost));
    }
  }

  private static Constraint wider(Constraint row, int offset, int size) {
    double[] wide = new double[size];
    for (int j = 0; j < row.size(); j++) {
      wide[offset + j] = row.coefficient(j);
    }
    return Constraint.of(wide, row.low(), row.high());
  }

  /** What is there of a thing, and what is had elsewhere on top. */
  private Constraint there(int s, int size) {
    double[] row = new double[size];
    row[size - 2 * (task.scarce().size() - s)] = 1;
    row[size - 2 * (task.scarce().size() - s) + 1] = -1;
    return Constraint.of(row, Double.NEGATIVE_INFINITY, task.scarce().get(s).kg());
  }

  /** What all take of it, and what those take that are made late; gives how much is missed. */
  private double taken(List<Around> all, int s, int size, List<Constraint> constraints) {
    Scarce scarce = task.scarce().get(s);
    List<Double> whole = all.stream().map(one -> 1.0).toList();
    double missed = row(all, s, size, new Until(0, whole), constraints);
    for (Until until : scarce.until()) {
      missed = Math.max(missed, row(all, s, size, until, constraints));
    }
    return missed;
  }

  private double row(List<Around> all, int s, int size, Until until, List<Constraint> constraints) {
    Scarce scarce = task.scarce().get(s);
    double[] row = new double[size];
    double now = 0;
    double there = 0;
    for (int f = 0; f < all.size(); f++) {
      Around one = all.get(f);
      double part = until.parts().get(f);
      Slope taken = one.all(one.slopes.taken(scarce.ingredient()));
      now += part * taken.now();
      for (int i = 0; i < one.shares.length; i++) {
        int line = one.made.task().free().get(i).line().index();
        row[one.offset + i] = part * taken.perPoint()[line];
        there += row[one.offset + i] * one.shares[i];
      }
    }
    row[size - 2 * (task.scarce().size() - s)] = -1;
    double most = there - now - until.lessKg();
    constraints.add(Constraint.of(row, Double.NEGATIVE_INFINITY, most));
    boolean open = Double.isFinite(scarce.elsewhere());
    double over = now + until.lessKg() - scarce.kg();
    return open ? 0 : over / Math.max(TINY, Math.max(now, scarce.kg()));
  }
}
