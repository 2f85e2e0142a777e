package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;

/** Masses of what is shared out in words: the same figure looks the same everywhere. */
final class ShareOutWords {
  private static final double TONNE = 1000;

  /** From so many kg on nobody looks at the decimal. */
  private static final double WHOLE = 100;

  private ShareOutWords() {}

  /** {@code 4 t} or {@code 600 kg}. */
  static String mass(double kg) {
    return Figures.plain(kg, kg < TONNE ? Unit.KG : Unit.T);
  }

  /** {@code 1240}, {@code 12.4} or {@code 0.034}. */
  static String kg(double kg) {
    return kg == 0 ? "-" : kg < 1 ? Figures.plain(kg) : Figures.fixed(kg, kg >= WHOLE ? 0 : 1);
  }
}
