package dev.pellucid.engine.plan;

import dev.pellucid.measure.Closeness;

/**
 * How finely a sheet shows masses, until the scales of the plant are known: the decimals of a kg
 * for large lines and masses of the whole batch, and for small lines. Large ones are shown to about
 * a twenty-thousandth of the batch, small ones a hundred times finer and never with less than three
 * digits (our own choice, no source).
 */
record Grid(int kg, int small) {
  private static final double PART_OF_BATCH = 5e-5;
  private static final int MOST = 7;
  private static final int FINER = 2;
  private static final double THREE_DIGITS = 100;

  /**
   * @param least the smallest mass among the small lines; infinite where there is none
   */
  static Grid of(double batchKg, double least) {
    int kg = (int) Math.round(-Closeness.down(Math.log10(batchKg * PART_OF_BATCH)));
    int decimals = Math.max(0, Math.min(MOST, kg));
    int small = decimals + FINER;
    while (small < MOST + FINER && least * Math.pow(10, small) < THREE_DIGITS) {
      small++;
    }
    return new Grid(decimals, small);
  }
}
