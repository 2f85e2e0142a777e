package dev.pellucid.engine.explain;

import java.util.Comparator;

/**
 * What one line, or one step, brings to a figure, before it is rounded.
 *
 * @param line of the recipe and through what it comes, or the step
 * @param kg per 100 kg of recipe
 * @param holds its content in words
 * @param kept percent of it that the process leaves; may be empty
 * @param deviation one standard deviation of the amount
 * @param amount in 100 kg of recipe, in the base of the kind
 * @param source of the content; may be empty
 */
record Brought(
    String line,
    double kg,
    String holds,
    String kept,
    double deviation,
    double amount,
    String source) {
  static final Comparator<Brought> LARGEST_FIRST =
      Comparator.comparingDouble(Brought::amount).reversed();
}
