package dev.pellucid.engine.quality;

/** What a coefficient of variation is worth. */
public enum Evenness {
  /** Even enough for the strict. */
  STRICT,
  /** Even enough as it is common. */
  COMMON,
  /** Mix longer, look at the mixer, or change what is mixed. */
  UNEVEN;

  private static final double CLOSE = 1e-9;

  /** All three figures are shares. */
  static Evenness of(double variation, double strict, double common) {
    if (variation <= strict * (1 + CLOSE)) {
      return STRICT;
    }
    return variation <= common * (1 + CLOSE) ? COMMON : UNEVEN;
  }
}
