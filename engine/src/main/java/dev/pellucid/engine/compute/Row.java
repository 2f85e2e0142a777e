package dev.pellucid.engine.compute;

import dev.pellucid.engine.larder.Composition;
import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Price;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.resolve.Line;
import java.util.List;
import java.util.Optional;

/**
 * What one ingredient of one line brings, premixes opened. Masses are kg per 100 kg of recipe;
 * amounts are such a mass times a content, so that an amount over the finished mass is per kg of
 * feed.
 *
 * @param line the line of the recipe to blame
 * @param path from the line down: {@code VM-CAT}, {@code zinc-sulphate}
 * @param kg at the expected end, in the feed
 * @param kgRichest with all handling overage
 * @param expected amounts
 * @param poorest amounts
 * @param richest amounts
 * @param spread one standard deviation of the expected amounts
 */
public record Row(
    Line line,
    List<String> path,
    Ingredient ingredient,
    Composition composition,
    Optional<Price> price,
    double kg,
    double kgRichest,
    Dense expected,
    Dense poorest,
    Dense richest,
    Dense spread) {

  Dense amounts(End end) {
    return switch (end) {
      case EXPECTED -> expected;
      case POOREST -> poorest;
      case RICHEST -> richest;
    };
  }

  /** The amount of one nutrient at an end. */
  public double amount(End end, int nutrient) {
    return amounts(end).at(nutrient);
  }

  /** The amount that the content at one end makes in the mass at another. */
  double amount(End content, End mass, int nutrient) {
    return content == mass
        ? amount(mass, nutrient)
        : amount(content, nutrient) * scale(content, mass);
  }

  /** One standard deviation of {@link #amount(End, End, int)}: what decays varies less. */
  double deviation(End content, End mass, int nutrient) {
    double full = spread.at(nutrient) * scale(End.EXPECTED, mass);
    double fresh = expected.at(nutrient);
    return content == End.POOREST && fresh > 0 ? full * poorest.at(nutrient) / fresh : full;
  }

  private double scale(End from, End to) {
    return kg(from) > 0 ? kg(to) / kg(from) : 0;
  }

  /** The mass at an end. */
  public double kg(End end) {
    return end == End.RICHEST ? kgRichest : kg;
  }
}
