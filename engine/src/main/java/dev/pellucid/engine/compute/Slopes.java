package dev.pellucid.engine.compute;

import dev.pellucid.engine.compute.MassSlopes.Mass;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What one point more of each line does to the figures of a feed; a point is a kg of its share as
 * written, per 100 kg of recipe.
 *
 * <p>A figure of a feed is a sum over its lines divided by another: by the mass of the finished
 * feed, by its dry matter, or by the lower sum of a ratio. So a bound on it, multiplied out, is a
 * plain sum over lines: {@code amount - bound * mass >= 0}. Only the deviation between lots is not;
 * it is bent upwards, so that the plane which touches it here lies below it everywhere. The mass of
 * a feed hangs on four figures alone, mix and coat with the water in each; how, the process says.
 */
public final class Slopes {
  private final ComputedFeed feed;
  private final RowsByLine rowsByLine;
  private final Row[] rows;

  /** What one kg of its line in the feed brings of each row. */
  private final double[] share;

  /** The same with the handling overage of premixes and of the line. */
  private final double[] most;

  private final Readings readings;
  private final Deviations deviations;
  private final MassSlopes masses;

  /** A sum over lines. */
  public static final class Slope {
    private final double now;
    private final double[] perPoint;

    public Slope(double now, double[] perPoint) {
      this.now = now;
      this.perPoint = perPoint;
    }

    /** What it is. */
    public double now() {
      return now;
    }

    /** What a point of each line adds, by the index of the line; nobody writes to it. */
    public double[] perPoint() {
      return perPoint;
    }

    /** This less so many times another. */
    public Slope minus(double times, Slope other) {
      double[] per = new double[perPoint.length];
      for (int i = 0; i < per.length; i++) {
        per[i] = perPoint[i] - times * other.perPoint[i];
      }
      return new Slope(now - times * other.now, per);
    }

    /** The same with the other sign. */
    public Slope negated() {
      double[] per = new double[perPoint.length];
      for (int i = 0; i < per.length; i++) {
        per[i] = -perPoint[i];
      }
      return new Slope(-now, per);
    }
  }

  public Slopes(ComputedFeed feed) {
    this.feed = feed;
    this.rowsByLine = new RowsByLine(feed);
    this.rows = rowsByLine.rows();
    this.share = rowsByLine.share();
    this.most = rowsByLine.most();
    this.readings = new Readings(feed);
    this.deviations = new Deviations(feed);
    this.masses = new MassSlopes(feed, rowsByLine);
  }

  public ComputedFeed feed() {
    return feed;
  }

  /** What the rows are read off. */
  public Readings readings() {
    return readings;
  }

  /**
   * What is left to one side of a limit, each time multiplied out so that it is a sum over lines;
   * at zero the limit is just kept. Where handling overage may be lost or not, there are two.
   *
   * @param bound in the base of the subject's kind
   * @param deviations how many of them between lots must fit in beside the figure
   */
  public List<Slope> room(
      Subject subject, Basis basis, Bound.Side side, double bound, double deviations) {
    return subject.byKind(
        sum -> roomOfSum(sum.indexes(), basis, side, bound, deviations),
        ratio -> roomOfRatio(ratio, side, bound, deviations),
        inclusion -> List.of(toBound(side, inclusion(inclusion.names()), bound * 100)),
        cost -> List.of(toMass(side, money(), bound, bagged())));
  }

  /** The same of what is told alone, without the most that an untold content can be. */
  public List<Slope> roomAsTold(
      Subject.Nutrients sum, Basis basis, Bound.Side side, double bound, double deviations) {
    List<Slope> rooms = new ArrayList<>(2);
    for (Mass mass : massesAt(side)) {
      Scenario content = side == Bound.Side.MIN ? Scenario.POOREST : Scenario.RICHEST;
      Slope amount = told(sum.indexes(), content, mass);
      rooms.add(room(sum.indexes(), amount, content, basis, side, bound, deviations, mass));
    }
    return rooms;
  }

  /**
   * What is left to a figure as the customer gets it, below at the end of shelf life and above when
   * the bag is filled.
   *
   * @param bound per kg as fed
   */
  public Slope labelRoom(Subject.Nutrients sum, Bound.Side side, double bound) {
    Scenario content = side == Bound.Side.MIN && decays(sum) ? Scenario.POOREST : Scenario.EXPECTED;
    return toMass(
        side, amount(sum.indexes(), content, Mass.of(Scenario.EXPECTED)), bound, finished());
  }

  private boolean decays(Subject.Nutrients sum) {
    for (Row row : rows) {
      for (int nutrient : sum.indexes()) {
        if (row.composition().stability().get(nutrient) != 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Money for 100 kg of recipe. */
  public Slope money() {
    double[] per = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      per[i] = rows[i].price().isPresent() ? rows[i].price().get().perKg() * most[i] : 0;
    }
    return new Slope(feed.costPer100(), rowsByLine.byLine(per));
  }

  /** The kg of an ingredient that are weighed, wherever it stands: what its price counts for. */
  public Slope bought(String ingredient) {
    return bought(row -> row.ingredient().name().equals(ingredient));
  }

  /** The kg of an ingredient that the store gives: without what comes back with rework. */
  public Slope taken(String ingredient) {
    return bought(
        row ->
            row.ingredient().name().equals(ingredient)
                && row.line().material().reworked().isEmpty());
  }

  /** The kg of an ingredient that premixes bring. */
  public Slope premixed(String ingredient) {
    return bought(
        row ->
            row.ingredient().name().equals(ingredient)
                && row.line().material().premixed().isPresent());
  }

  private Slope bought(Predicate<Row> counts) {
    double[] per = new double[rows.length];
    double now = 0;
    for (int i = 0; i < rows.length; i++) {
      if (counts.test(rows[i])) {
        per[i] = most[i];
        now += rows[i].kgRichest();
      }
    }
    return new Slope(now, rowsByLine.byLine(per));
  }

  /** Bagged kg of 100 kg of recipe. */
  public Slope bagged() {
    Slope finished = masses.of(Mass.of(Scenario.EXPECTED)).finished();
    return finished.minus(feed.shrink(), finished);
  }

  /** The kg in 100 kg of recipe that come from rows of some kind, each times something. */
  public Slope kg(ToDoubleFunction<Row> perKg) {
    double[] per = new double[rows.length];
    double now = 0;
    for (int i = 0; i < rows.length; i++) {
      double each = perKg.applyAsDouble(rows[i]);
      per[i] = each * share[i];
      now += each * rows[i].kg();
    }
    return new Slope(now, rowsByLine.byLine(per));
  }

  /** What goes into the mixer of 100 kg of recipe, handling overage lost. */
  public Slope mix() {
    return kg(row -> row.line().place() == Place.MIX ? 1 : 0);
  }

  /** What is there when the coat goes on. */
  public Slope kernel() {
    return masses.of(Mass.of(Scenario.EXPECTED)).kernel();
  }

  /** Finished feed of 100 kg of recipe, before shrink. */
  public Slope finished() {
    return masses.of(Mass.of(Scenario.EXPECTED)).finished();
  }

  /** The share of these ingredients, groups or codes, in kg per 100 kg of recipe. */
  public Slope inclusion(List<String> names) {
    return kg(row -> Readings.isOneOf(row, names) ? 1 : 0);
  }

  /** The amount of some nutrients at an end, per 100 kg of recipe. */
  public Slope amount(Subject.Nutrients sum, Scenario end) {
    return amount(sum.indexes(), end, Mass.of(end));
  }

  private List<Mass> massesAt(Bound.Side side) {
    if (side == Bound.Side.MIN) {
      return List.of(Mass.of(Scenario.POOREST));
    }
    Mass with = Mass.of(Scenario.RICHEST);
    return feed.balances().losesOverage()
        ? List.of(with, new Mass(Scenario.RICHEST, true))
        : List.of(with);
  }

  private List<Slope> roomOfSum(
      int[] nutrients, Basis basis, Bound.Side side, double bound, double deviations) {
    List<Slope> rooms = new ArrayList<>(2);
    Scenario content = side == Bound.Side.MIN ? Scenario.POOREST : Scenario.RICHEST;
    for (Mass mass : massesAt(side)) {
      Slope amount = amount(nutrients, content, mass);
      rooms.add(room(nutrients, amount, content, basis, side, bound, deviations, mass));
    }
    return rooms;
  }

  private Slope room(
      int[] nutrients,
      Slope amount,
      Scenario content,
      Basis basis,
      Bound.Side side,
      double bound,
      double quantile,
      Mass mass) {
    MassSlopes.Masses of = masses.of(mass);
    double ofAll = basis.toAsFed(bound, 0);
    double ofDry = basis.toAsFed(bound, 1) - ofAll;
    Slope over = amount.minus(ofAll, of.finished()).minus(ofDry, of.dry());
    Slope room = side == Bound.Side.MIN ? over : over.negated();
    return quantile == 0
        ? room
        : room.minus(
            quantile,
            new Slope(
                deviations.ofSum(nutrients, content, mass.ofLines()),
                rowsByLine.byLine(
                    rowsByLine.perRow(
                        deviations.slopesOfSum(nutrients, content, mass.ofLines()),
                        mass.ofLines()))));
  }

  private List<Slope> roomOfRatio(
      Subject.Ratio ratio, Bound.Side side, double bound, double quantile) {
    boolean min = side == Bound.Side.MIN;
    Scenario above = min ? Scenario.POOREST : Scenario.RICHEST;
    Scenario below = min ? Scenario.RICHEST : Scenario.POOREST;
    double plain = ratio.kind() == Subject.RatioKind.PER_ENERGY ? bound / 1000 : bound;
    List<Mass> both =
        feed.balances().losesOverage()
            ? List.of(Mass.of(Scenario.POOREST), Mass.of(Scenario.RICHEST))
            : List.of(Mass.of(Scenario.POOREST));
    List<Slope> rooms = new ArrayList<>(2);
    for (Mass mass : both) {
      int[] upper = ratio.over().indexes();
      int[] lower = ratio.under().indexes();
      Slope up = amount(upper, above, mass);
      Slope down = amount(lower, below, mass);
      Slope over = up.minus(plain, down);
      Slope room = min ? over : over.negated();
      if (quantile != 0 && down.now() > 0) {
        double quotient = up.now() / down.now();
        Deviations.OfRatio varies =
            deviations.ratio(upper, above, lower, below, mass.ofLines(), quotient);
        room =
            room.minus(
                quantile,
                new Slope(
                    varies.deviation(),
                    rowsByLine.byLine(rowsByLine.perRow(varies.slopes(), mass.ofLines()))));
      }
      rooms.add(room);
    }
    return rooms;
  }

  private static Slope toBound(Bound.Side side, Slope figure, double bound) {
    Slope over = new Slope(figure.now() - bound, figure.perPoint());
    return side == Bound.Side.MIN ? over : over.negated();
  }

  private static Slope toMass(Bound.Side side, Slope amount, double bound, Slope mass) {
    Slope over = amount.minus(bound, mass);
    return side == Bound.Side.MIN ? over : over.negated();
  }

  private Slope amount(int[] nutrients, Scenario content, Mass mass) {
    return amount(nutrients, mass, row -> content);
  }

  private Slope told(int[] nutrients, Scenario content, Mass mass) {
    Slope sum = new Slope(0, new double[rowsByLine.lines()]);
    for (int nutrient : nutrients) {
      int[] alone = {nutrient};
      Slope one =
          amount(
              alone,
              mass,
              row -> row.composition().isUnknown(nutrient) ? Scenario.EXPECTED : content);
      sum = sum.minus(-1, one);
    }
    return sum;
  }

  /** Where a row is read. */
  private interface ReadAt {
    Scenario of(Row row);
  }

  private Slope amount(int[] nutrients, Mass mass, ReadAt at) {
    double[] per = new double[rows.length];
    double now = 0;
    boolean water = false;
    double[] each = mass.ofLines() == Scenario.RICHEST ? most : share;
    for (int nutrient : nutrients) {
      if (feed.nutrients().isMoisture(nutrient)) {
        water = true;
        continue;
      }
      for (int i = 0; i < rows.length; i++) {
        double holds = rows[i].kept(at.of(rows[i])).at(nutrient);
        per[i] += holds * each[i];
        now += holds * rows[i].kg(mass.ofLines());
      }
    }
    Slope amount = new Slope(now, rowsByLine.byLine(per));
    return water ? amount.minus(-1, water(mass)) : amount;
  }

  /** The water of a feed is that of the end at which it is wettest or driest, in the mass here. */
  private Slope water(Mass mass) {
    boolean dry = mass.end() == Scenario.POOREST;
    Mass chosen = Mass.of(Scenario.EXPECTED);
    double moisture = feed.balances().expected().moisture();
    for (Scenario end : List.of(Scenario.POOREST, Scenario.RICHEST)) {
      double there = feed.balances().at(end).moisture();
      boolean further = dry ? there < moisture : there > moisture;
      if (mass.end() != Scenario.EXPECTED && further) {
        chosen = Mass.of(end);
        moisture = there;
      }
    }
    MassSlopes.Masses from = masses.of(chosen);
    Slope finished = masses.of(mass).finished();
    double[] per = new double[rowsByLine.lines()];
    for (int i = 0; i < per.length; i++) {
      double drier =
          from.finished().now() > 0
              ? ((1 - moisture) * from.finished().perPoint()[i] - from.dry().perPoint()[i])
                  / from.finished().now()
              : 0;
      per[i] = moisture * finished.perPoint()[i] + drier * finished.now();
    }
    return new Slope(moisture * finished.now(), per);
  }
}
