package dev.pellucid.engine.compute;

import java.util.Arrays;

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
  private static final double[] NOTHING = {};

  private final ComputedFeed feed;

  /** For each row a place of its ingredient, the same for all its rows; empty until needed. */
  private int[] ingredientOf = {};

  Deviations(ComputedFeed feed) {
    this.feed = feed;
  }

  /** Of a sum of nutrients, read at one end in the mass of another. */
  double ofSum(int[] nutrients, Scenario content, Scenario mass) {
    double[] byIngredient = new double[feed.rows().size()];
    for (double[] moved : moves(nutrients, content, mass)) {
      for (int i = 0; i < moved.length; i++) {
        byIngredient[i] += Math.abs(moved[i]);
      }
    }
    return root(byIngredient);
  }

  /**
   * Of {@code upper : lower}, in the amount of the upper one: how far it moves against {@code
   * quotient} times the lower one.
   */
  double ofRatio(
      int[] upper, Scenario above, int[] lower, Scenario below, Scenario mass, double quotient) {
    double[][] over = moves(upper, above, mass);
    double[][] under = moves(lower, below, mass);
    double[] aboveAlone = new double[feed.rows().size()];
    double[] belowAlone = new double[aboveAlone.length];
    double[] both = new double[aboveAlone.length];
    for (int content = 0; content < over.length; content++) {
      double[] up = over[content];
      double[] down = under[content];
      for (int i = 0; i < Math.max(up.length, down.length); i++) {
        double raises = i < up.length ? up[i] : 0;
        double lowers = i < down.length ? down[i] : 0;
        double[] side = lowers == 0 ? aboveAlone : raises == 0 ? belowAlone : both;
        side[i] += Math.abs(raises - quotient * lowers);
      }
    }
    return Math.hypot(root(both), Math.hypot(root(aboveAlone), root(belowAlone)));
  }

  private static double root(double[] deviations) {
    double squares = 0;
    for (double one : deviations) {
      squares += one * one;
    }
    return Math.sqrt(squares);
  }

  /**
   * By each content that is told, how far one standard deviation of it in each ingredient moves the
   * sum; with a sign, for it may enter the sum on two ways. Of a content that does not move it
   * there is nothing.
   */
  private double[][] moves(int[] nutrients, Scenario content, Scenario mass) {
    double[][] moves = new double[feed.nutrients().count()][];
    Arrays.fill(moves, NOTHING);
    int[] ingredientOf = ingredientOf();
    for (int i = 0; i < ingredientOf.length; i++) {
      Row row = feed.rows().get(i);
      for (int nutrient : nutrients) {
        if (feed.nutrients().isMoisture(nutrient) && !feed.keepsItsWater(row)) {
          continue;
        }
        for (Composition.Derived.Term term : row.composition().net().get(nutrient)) {
          int moving = term.nutrient();
          if (moves[moving].length == 0) {
            moves[moving] = new double[ingredientOf.length];
          }
          moves[moving][ingredientOf[i]] += term.factor() * row.told(content, mass, moving);
        }
      }
    }
    return moves;
  }

  private int[] ingredientOf() {
    if (ingredientOf.length < feed.rows().size()) {
      String[] names = new String[feed.rows().size()];
      Arrays.setAll(names, this::name);
      Arrays.sort(names);
      ingredientOf = new int[names.length];
      Arrays.setAll(ingredientOf, i -> Arrays.binarySearch(names, name(i)));
    }
    return ingredientOf;
  }

  private String name(int row) {
    return feed.rows().get(row).ingredient().name();
  }
}
