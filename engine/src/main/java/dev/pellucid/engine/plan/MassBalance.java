package dev.pellucid.engine.plan;

/**
 * Where the mass of a batch goes, in kg.
 *
 * @param weighed the recipe, before overage and water
 * @param handling overage weighed on top and expected to be lost; in none of the figures below
 * @param mix what goes through the mixer
 * @param water added to the mix
 * @param steam taken up
 * @param evaporated in dryer and cooler
 * @param kernel what is left before the coat
 * @param coat what goes on the kernel
 * @param finished feed, before shrink
 * @param shrink dust, fines and start-up
 */
public record MassBalance(
    double weighed,
    double handling,
    double mix,
    double water,
    double steam,
    double evaporated,
    double kernel,
    double coat,
    double finished,
    double shrink) {
  /** What reaches the bags. */
  public double bagged() {
    return finished - shrink;
  }

  /** Bagged kg per kg of recipe, a share. */
  public double yielded() {
    return bagged() / weighed;
  }

  /** What comes in less what goes out; nought but for rounding. */
  public double unaccounted() {
    return mix + water + steam + coat - evaporated - finished;
  }
}
