package dev.pellucid.engine.weighing;

import dev.pellucid.engine.data.Scale;

/**
 * What a scale must show, in kg net of the container.
 *
 * @param weighings how often it must show it
 * @param each a whole number of divisions
 * @param tolerance how far each may be off, a whole number of divisions
 */
public record Weight(Scale scale, int weighings, double each, double tolerance) {
  public Weight {
    if (weighings < 1 || each < 0 || tolerance < 0) {
      throw new IllegalArgumentException("no weight");
    }
  }

  /** All weighings together. */
  public double total() {
    return weighings * each;
  }
}
