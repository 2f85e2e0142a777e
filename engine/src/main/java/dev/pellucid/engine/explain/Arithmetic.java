package dev.pellucid.engine.explain;

import dev.pellucid.engine.quantity.Figures;
import java.math.BigDecimal;

/** Divisions in words that are right as they are printed. */
final class Arithmetic {
  /** How many digits more than usual a figure may take before it is called rounded. */
  private static final int MORE = 3;

  private static final int MOST_DECIMALS = 9;
  private static final String ROUNDED = " (rounded)";

  private Arithmetic() {}

  /** A figure and the words behind it. */
  record Told(double figure, int decimals, String words) {
    Told(double figure, String words) {
      this(figure, Figures.decimals(figure), words);
    }

    private String shown(int more) {
      return Figures.fixed(figure, Math.min(MOST_DECIMALS, decimals + more));
    }
  }

  /**
   * {@code 35.76 kg / 98.736 kg of feed}.
   *
   * @param factor of the quotient, where its unit is another
   * @param result of the division, as it is printed
   */
  static String quotient(Told over, Told under, double factor, BigDecimal result) {
    for (int more = 0; more <= MORE; more++) {
      double quotient =
          Double.parseDouble(over.shown(more)) / Double.parseDouble(under.shown(more)) * factor;
      if (Double.isFinite(quotient)
          && Figures.fixed(quotient, result.scale()).equals(result.toPlainString())) {
        return words(over, under, more);
      }
    }
    return words(over, under, 0) + ROUNDED;
  }

  private static String words(Told over, Told under, int more) {
    return over.shown(more) + over.words() + " / " + under.shown(more) + under.words();
  }
}
