package dev.pellucid.engine.quality;

import dev.pellucid.measure.Closeness;

/** What a coefficient of variation is worth. */
public enum Evenness {
  /** Even enough for the strict. */
  STRICT,
  /** Even enough as it is common. */
  COMMON,
  /** Mix longer, look at the mixer, or change what is mixed. */
  UNEVEN;

  /** All three figures are shares. */
  static Evenness of(double variation, double strict, double common) {
    if (Closeness.isAtMost(variation, strict)) {
      return STRICT;
    }
    return Closeness.isAtMost(variation, common) ? COMMON : UNEVEN;
  }
}
