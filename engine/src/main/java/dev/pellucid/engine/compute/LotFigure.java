package dev.pellucid.engine.compute;

import java.util.Optional;

/**
 * A figure that is held against a bound, while lots differ: {@code times × above}, or {@code times
 * × above : below} for a ratio.
 */
public record LotFigure(LotSum above, Optional<LotSum> below, double times) {
  /** The figure, in the base of its kind, of sums as they are in one batch. */
  public double of(double above, double below) {
    return times * (this.below.isPresent() ? Readings.over(above, below) : above);
  }
}
