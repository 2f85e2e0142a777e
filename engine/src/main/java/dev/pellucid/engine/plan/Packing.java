package dev.pellucid.engine.plan;

/**
 * Full bags and what is left over.
 *
 * @param bag kg in a full bag
 * @param full how many
 * @param remainder kg in the last bag; nought when there is none
 */
public record Packing(double bag, long full, double remainder) {
  private static final double CLOSE = 1e-9;

  /** Packs a mass. */
  static Packing of(double kg, double bag) {
    long full = (long) Math.floor(kg / bag + CLOSE);
    return new Packing(bag, full, Math.max(0, kg - full * bag));
  }

  /** Whether a gram or more is left over. */
  public boolean hasRemainder() {
    return remainder >= 0.001;
  }
}
