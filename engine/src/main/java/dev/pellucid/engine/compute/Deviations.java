package dev.pellucid.engine.compute;

import java.util.Arrays;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

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

  /** For each row a place of its ingredient, the same for all its rows; empty until needed. */
  private int[] ingredientOf = {};

  Deviations(ComputedFeed feed) {
    this.feed = feed;
  }

  /** Of a sum of nutrients, read at one end in the mass of another. */
  double ofSum(int[] nutrients, Scenario content, Scenario mass) {
    double[] byIngredient = new double[feed.rows().size()];
    for (double[] moved : moves(nutrients, content, mass).values()) {
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
    SortedMap<Integer, double[]> over = moves(upper, above, mass);
    SortedMap<Integer, double[]> under = moves(lower, below, mass);
    SortedSet<Integer> contents = new TreeSet<>(over.keySet());
    contents.addAll(under.keySet());
    int ingredients = feed.rows().size();
    double[] none = new double[ingredients];
    double[] aboveAlone = new double[ingredients];
    double[] belowAlone = new double[ingredients];
    double[] both = new double[ingredients];
    for (int content : contents) {
      double[] up = over.getOrDefault(content, none);
      double[] down = under.getOrDefault(content, none);
      for (int i = 0; i < ingredients; i++) {
        double[] side = down[i] == 0 ? aboveAlone : up[i] == 0 ? belowAlone : both;
        side[i] += Math.abs(up[i] - quotient * down[i]);
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
   * sum; with a sign, for it may enter the sum on two ways.
   */
  private SortedMap<Integer, double[]> moves(int[] nutrients, Scenario content, Scenario mass) {
    SortedMap<Integer, double[]> moves = new TreeMap<>();
    int[] ingredientOf = ingredientOf();
    for (int i = 0; i < ingredientOf.length; i++) {
      Row row = feed.rows().get(i);
      for (int nutrient : nutrients) {
        if (feed.nutrients().isMoisture(nutrient) && !feed.keepsItsWater(row)) {
          continue;
        }
        for (Composition.Derived.Term term : row.composition().net().get(nutrient)) {
          double told = row.told(content, mass, term.nutrient());
          double[] moved =
              moves.computeIfAbsent(term.nutrient(), any -> new double[ingredientOf.length]);
          moved[ingredientOf[i]] += term.factor() * told;
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
