package dev.pellucid.engine.trend;

import java.util.OptionalDouble;

/**
 * A batch on the course of a figure.
 *
 * @param place which of the batches of its recipe it is, as they were made; from 0
 * @param centre what its figure is held against
 * @param off found less the centre
 * @param spreads the same in spreads; empty where no spread is known
 */
public record Spot(
    int place,
    MeasuredBatch batch,
    Measured figure,
    double centre,
    double off,
    OptionalDouble spreads) {

  /** On which side of the centre it lies: 1 above, -1 below, 0 on it. */
  public int side() {
    double noise = 1e-9 * Math.max(Math.abs(centre), Math.abs(figure.found()));
    return Math.abs(off) <= noise ? 0 : off > 0 ? 1 : -1;
  }
}
