package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Dense;

/**
 * What one kg of an ingredient still holds of each nutrient in the feed, by end.
 *
 * @param spread one standard deviation of what is expected
 */
record Retained(Dense expected, Dense poorest, Dense richest, Dense spread) {
  /** Of an ingredient that loses nothing on its way. */
  static Retained all(Composition composition) {
    return new Retained(
        composition.expected(), composition.low(), composition.high(), composition.spread());
  }

  Dense at(Scenario end) {
    return end == Scenario.EXPECTED ? expected : end == Scenario.POOREST ? poorest : richest;
  }
}
