package dev.pellucid.engine.compute;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How far a figure of a feed moves from lot to lot: one standard deviation, in the amounts of 100
 * kg of recipe.
 *
 * <p>What is known is the deviation of each content that an ingredient tells. A figure moves with
 * such a content by its net factor, whichever way it hangs on it ({@link Composition#net}). Then
 * three rules:
 *
 * <ul>
 *   <li>Ingredients move apart: the root of the sum of squares.
 *   <li>Within one ingredient, the contents of a sum move together in full, each to the side that
 *       moves the sum more: a plain sum without signs. Nothing is known of how they move against
 *       each other, and this is the side that does not flatter.
 *   <li>The two sides of a ratio move apart, also within one ingredient: if they moved together,
 *       the ratio would hardly move at all. A content on both sides counts once, with what it does
 *       to the ratio (the delta method), and apart from the others.
 * </ul>
 *
 * <p>The moisture of a feed that a step brings to an aim does not hang on the water of what went in
 * before it. It varies within what the step takes, and minima and maxima are judged at its ends.
 */
final class Deviations {
  private final ComputedFeed feed;

  /** The rows of each ingredient together; empty until needed. */
  private List<List<Row>> byIngredient = List.of();

  Deviations(ComputedFeed feed) {
    this.feed = feed;
  }

  /** Of a sum of nutrients, read at one end in the mass of another. */
  double ofSum(int[] nutrients, Scenario content, Scenario mass) {
    LotMoves moves = new LotMoves(feed);
    double squares = 0;
    for (List<Row> rows : byIngredient()) {
      moves.take(rows, nutrients, content, mass);
      double together = 0;
      for (int told = moves.next(0); told >= 0; told = moves.next(told + 1)) {
        together += Math.abs(moves.taken(told));
      }
      squares += together * together;
    }
    return Math.sqrt(squares);
  }

  /**
   * Of {@code upper : lower}, in the amount of the upper one: how far it moves against {@code
   * quotient} times the lower one.
   */
  double ofRatio(
      int[] upper, Scenario above, int[] lower, Scenario below, Scenario mass, double quotient) {
    LotMoves over = new LotMoves(feed);
    LotMoves under = new LotMoves(feed);
    double squares = 0;
    for (List<Row> rows : byIngredient()) {
      over.take(rows, upper, above, mass);
      under.take(rows, lower, below, mass);
      double aboveAlone = 0;
      double belowAlone = 0;
      double both = 0;
      for (int told = 0; (told = first(over.next(told), under.next(told))) >= 0; told++) {
        double up = over.taken(told);
        double down = under.taken(told);
        double moved = Math.abs(up - quotient * down);
        aboveAlone += down == 0 ? moved : 0;
        belowAlone += down != 0 && up == 0 ? moved : 0;
        both += down != 0 && up != 0 ? moved : 0;
      }
      squares += aboveAlone * aboveAlone + belowAlone * belowAlone + both * both;
    }
    return Math.sqrt(squares);
  }

  /**
   * By how much the deviation of a sum grows with one kg more of each row, by their order; it grows
   * more the more there is, so that the plane through here lies below it everywhere.
   */
  double[] slopesOfSum(int[] nutrients, Scenario content, Scenario mass) {
    List<Row> every = feed.everyRow();
    double[] slopes = new double[every.size()];
    double deviation = ofSum(nutrients, content, mass);
    if (deviation == 0) {
      return slopes;
    }
    LotMoves moves = new LotMoves(feed);
    Map<String, Pulls> byName = new HashMap<>();
    for (List<Row> rows : byIngredient()) {
      moves.take(rows, nutrients, content, mass);
      byName.put(rows.get(0).ingredient().name(), together(moves));
    }
    for (int i = 0; i < slopes.length; i++) {
      Row row = every.get(i);
      Pulls of = byName.get(row.ingredient().name());
      slopes[i] = of == null ? 0 : of.alongside(row, nutrients, content) / deviation;
    }
    return slopes;
  }

  /** The deviation of a ratio, and by how much it grows with one kg more of each row. */
  static final class OfRatio {
    private final double deviation;
    private final double[] slopes;

    OfRatio(double deviation, double[] slopes) {
      this.deviation = deviation;
      this.slopes = slopes;
    }

    /** What it is. */
    double deviation() {
      return deviation;
    }

    /** By the order of the rows; nobody writes to it. */
    double[] slopes() {
      return slopes;
    }
  }

  /** The same as {@link #ofRatio}, with how it moves. */
  OfRatio ratio(
      int[] upper, Scenario above, int[] lower, Scenario below, Scenario mass, double quotient) {
    double deviation = ofRatio(upper, above, lower, below, mass, quotient);
    List<Row> every = feed.everyRow();
    double[] slopes = new double[every.size()];
    if (deviation == 0) {
      return new OfRatio(0, slopes);
    }
    Map<String, Pulls> byName = new HashMap<>();
    for (List<Row> rows : byIngredient()) {
      byName.put(
          rows.get(0).ingredient().name(), apart(rows, upper, above, lower, below, mass, quotient));
    }
    for (int i = 0; i < slopes.length; i++) {
      Row row = every.get(i);
      Pulls of = byName.get(row.ingredient().name());
      if (of != null) {
        slopes[i] =
            (of.alongside(row, upper, above) - quotient * of.alongside(row, lower, below))
                / deviation;
      }
    }
    return new OfRatio(deviation, slopes);
  }

  private Pulls apart(
      List<Row> rows,
      int[] upper,
      Scenario above,
      int[] lower,
      Scenario below,
      Scenario mass,
      double quotient) {
    LotMoves over = new LotMoves(feed);
    LotMoves under = new LotMoves(feed);
    over.take(rows, upper, above, mass);
    under.take(rows, lower, below, mass);
    double[] sums = new double[3];
    double[] pulls = new double[feed.nutrients().count()];
    int[] groups = new int[pulls.length];
    for (int told = 0; (told = first(over.next(told), under.next(told))) >= 0; told++) {
      double up = over.taken(told);
      double down = under.taken(told);
      groups[told] = down == 0 ? 0 : up == 0 ? 1 : 2;
      pulls[told] = Math.signum(up - quotient * down);
      sums[groups[told]] += Math.abs(up - quotient * down);
    }
    for (int told = 0; told < pulls.length; told++) {
      pulls[told] *= sums[groups[told]];
    }
    return new Pulls(pulls);
  }

  /** How hard each content of an ingredient pulls at a figure, and to which side. */
  private final class Pulls {
    private final double[] pulls;

    Pulls(double[] pulls) {
      this.pulls = pulls;
    }

    double alongside(Row row, int[] nutrients, Scenario content) {
      double along = 0;
      for (int nutrient : nutrients) {
        if (!feed.nutrients().isMoisture(nutrient) || feed.keepsItsWater(row)) {
          for (Composition.Derived.Term term : row.composition().net().get(nutrient)) {
            along +=
                pulls[term.nutrient()] * term.factor() * row.toldPerKg(content, term.nutrient());
          }
        }
      }
      return along;
    }
  }

  /** The nearer of two contents, of which either may be none. */
  private static int first(int one, int other) {
    return one < 0 ? other : other < 0 ? one : Math.min(one, other);
  }

  /** All of an ingredient that was taken in. */
  private Pulls together(LotMoves moves) {
    double sum = 0;
    double[] pulls = new double[feed.nutrients().count()];
    for (int told = moves.next(0); told >= 0; told = moves.next(told + 1)) {
      sum += Math.abs(moves.taken(told));
      pulls[told] = Math.signum(moves.taken(told));
    }
    for (int told = moves.next(0); told >= 0; told = moves.next(told + 1)) {
      pulls[told] *= sum;
    }
    return new Pulls(pulls);
  }

  private List<List<Row>> byIngredient() {
    if (byIngredient.isEmpty()) {
      byIngredient = feed.rowsByIngredient();
    }
    return byIngredient;
  }
}
