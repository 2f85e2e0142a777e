package dev.pellucid.engine.compute;

import java.util.List;

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

  /** The nearer of two contents, of which either may be none. */
  private static int first(int one, int other) {
    return one < 0 ? other : other < 0 ? one : Math.min(one, other);
  }

  private List<List<Row>> byIngredient() {
    if (byIngredient.isEmpty()) {
      byIngredient = feed.rowsByIngredient();
    }
    return byIngredient;
  }
}
