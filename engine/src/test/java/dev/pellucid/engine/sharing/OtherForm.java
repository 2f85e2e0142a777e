package dev.pellucid.engine.sharing;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Variable;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.optimise.JointTask.Made;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.optimise.JointTask.Until;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import dev.pellucid.engine.optimise.Tightened;
import java.util.ArrayList;
import java.util.List;

/**
 * A joint task as one linear program of another form: its variables are the mass of each line for
 * all that is made, and the mass of recipe that takes, so that no quotient is left in it (A.
 * Charnes and W. W. Cooper, Programming with linear fractional functionals, 1962). What bends is
 * the plane at the answer that is to be judged; what was chosen stays chosen.
 */
final class OtherForm {
  /** By how much, as a part of its size, a room may be missed and count as kept. */
  private static final double STILL = 1e-7;

  /**
   * What has so much to spare is left out: what costs least without it, and keeps it, costs least.
   */
  private static final double FAR = 0.01;

  private final JointAnswer.Found found;
  private final int size;
  private final List<Variable> variables = new ArrayList<>();
  private final List<Constraint> rows = new ArrayList<>();
  private final List<double[]> taken = new ArrayList<>();

  private OtherForm(JointAnswer.Found found) {
    this.found = found;
    int all = 0;
    for (Made made : found.task().feeds()) {
      all += made.task().free().size() + 1;
    }
    this.size = all;
  }

  static LinearProgram of(JointAnswer.Found found) {
    OtherForm form = new OtherForm(found);
    for (int s = 0; s < found.task().scarce().size(); s++) {
      form.taken.add(new double[form.size]);
    }
    int offset = 0;
    for (int f = 0; f < found.feeds().size(); f++) {
      form.feed(f, offset);
      offset += found.task().feeds().get(f).task().free().size() + 1;
    }
    form.scarce();
    return new LinearProgram(form.variables, form.rows);
  }

  private void feed(int f, int offset) {
    Made made = found.task().feeds().get(f);
    Slopes slopes = new Slopes(found.feeds().get(f));
    double[] shares = found.shares().get(f);
    Slope money = slopes.money();
    for (int i = 0; i < shares.length; i++) {
      double cost = per(money, made, i) * hundreds(f);
      variables.add(Variable.of(0, Double.POSITIVE_INFINITY, cost));
    }
    double cost = left(money, made, shares) * hundreds(f);
    variables.add(Variable.of(0, Double.POSITIVE_INFINITY, cost));
    for (int i = 0; i < shares.length; i++) {
      bounds(made.task().free().get(i), shares[i], offset + i, offset + shares.length);
    }
    for (Tightened kept : made.task().kept()) {
      for (Slope room : kept.rooms(slopes)) {
        if (room.now() > FAR * size(room, made, shares)) {
          continue;
        }
        double[] row = row(room, made, shares, offset);
        row[offset + shares.length] += STILL * size(room, made, shares);
        rows.add(Constraint.of(row, 0, Double.POSITIVE_INFINITY));
      }
    }
    double sum = made.task().free().stream().mapToDouble(Free::written).sum();
    double[] total = new double[size];
    for (int i = 0; i < shares.length; i++) {
      total[offset + i] = 1;
    }
    total[offset + shares.length] = -sum;
    rows.add(Constraint.of(total, -STILL * sum, STILL * sum));
    double[] mass = new double[size];
    mass[offset + shares.length] = 1;
    double[] bagged = row(slopes.bagged(), made, shares, offset);
    boolean weighed = made.counted() == Counted.WEIGHED;
    double bags = slopes.bagged().now();
    rows.add(weighed ? near(mass, 1) : near(bagged, bags));
    for (int s = 0; s < taken.size(); s++) {
      String name = found.task().scarce().get(s).ingredient();
      double[] its = row(slopes.taken(name), made, shares, offset);
      for (int j = offset; j <= offset + shares.length; j++) {
        taken.get(s)[j] = its[j] * hundreds(f);
      }
    }
  }

  /** The 100 kg of recipe that all of it takes at the answer: so all variables are of one size. */
  private double hundreds(int f) {
    Made made = found.task().feeds().get(f);
    return made.kg() / (made.counted() == Counted.WEIGHED ? 100 : found.feeds().get(f).bagged());
  }

  /** Two libraries do not agree on the last digits of an equality. */
  private static Constraint near(double[] row, double value) {
    return Constraint.of(row, value * (1 - STILL), value * (1 + STILL));
  }

  private void bounds(Free free, double share, int at, int recipe) {
    boolean out = free.orNone() && share < 1e-7;
    double low = free.step() > 0 || out ? share : free.low();
    double high = free.step() > 0 || out ? share : free.high();
    if (share < low + FAR * Math.max(1, low)) {
      rows.add(least(low, at, recipe));
    }
    if (share > high - FAR * Math.max(1, high)) {
      rows.add(most(high, at, recipe));
    }
  }

  private Constraint least(double low, int at, int recipe) {
    double[] least = new double[size];
    least[at] = 1;
    least[recipe] = -low + STILL * Math.max(1, low);
    return Constraint.of(least, 0, Double.POSITIVE_INFINITY);
  }

  private Constraint most(double high, int at, int recipe) {
    double[] most = new double[size];
    most[at] = 1;
    most[recipe] = -high - STILL * Math.max(1, high);
    return Constraint.of(most, Double.NEGATIVE_INFINITY, 0);
  }

  private void scarce() {
    for (int s = 0; s < taken.size(); s++) {
      Scarce scarce = found.task().scarce().get(s);
      rows.add(Constraint.of(taken.get(s), Double.NEGATIVE_INFINITY, scarce.kg() * (1 + STILL)));
      for (Until until : scarce.until()) {
        double[] part = new double[size];
        int offset = 0;
        for (int f = 0; f < found.feeds().size(); f++) {
          int end = offset + found.shares().get(f).length;
          for (int j = offset; j <= end; j++) {
            part[j] = taken.get(s)[j] * until.parts().get(f);
          }
          offset = end + 1;
        }
        rows.add(
            Constraint.of(
                part, Double.NEGATIVE_INFINITY, (scarce.kg() - until.lessKg()) * (1 + STILL)));
      }
    }
  }

  private double[] row(Slope sum, Made made, double[] shares, int offset) {
    double[] row = new double[size];
    for (int i = 0; i < shares.length; i++) {
      row[offset + i] = per(sum, made, i);
    }
    row[offset + shares.length] = left(sum, made, shares);
    return row;
  }

  /** How large what adds up to a room is. */
  private static double size(Slope room, Made made, double[] shares) {
    double size = 0;
    for (int i = 0; i < shares.length; i++) {
      size += Math.abs(per(room, made, i) * shares[i]);
    }
    return size;
  }

  private static double per(Slope sum, Made made, int i) {
    return sum.perPoint()[made.task().free().get(i).line().index()];
  }

  /** What the lines that are not free bring for 100 kg of recipe. */
  private static double left(Slope sum, Made made, double[] shares) {
    double left = sum.now();
    for (int i = 0; i < shares.length; i++) {
      left -= per(sum, made, i) * shares[i];
    }
    return left;
  }
}
