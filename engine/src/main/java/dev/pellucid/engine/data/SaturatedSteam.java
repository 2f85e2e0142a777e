package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.SteamTable.Row;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/**
 * What water holds on the saturation line, near enough to see a slip: the liquid about 4.19 kJ/kg
 * for each °C, the vapour about 2501 kJ/kg and 1.8 more for each °C. Nearer than 6 % from 0 to 250
 * °C.
 */
final class SaturatedSteam {
  private static final double LIQUID = 4.19;
  private static final double VAPOUR = 2501;
  private static final double RISE = 1.8;

  /** So far off a figure may be, of itself, and the liquid by so many kJ/kg near 0 °C. */
  private static final double PART = 0.2;

  private static final double NEAR = 8;
  private static final double COLDEST = 0.5;
  private static final double HOTTEST = 250;

  private SaturatedSteam() {}

  /** What does not fit, where one figure does not. */
  static Optional<Finding> odd(Fields block, Row row) {
    double liquid = LIQUID * row.temperature();
    double vapour = VAPOUR + RISE * row.temperature();
    boolean fits = isNear(row.liquid(), liquid);
    if (row.temperature() > HOTTEST || (!fits && fitsOther(row))) {
      return Optional.of(
          said(block, PracticeVocabulary.STEAM_TEMPERATURE, "liquid", row.liquid(), row));
    }
    if (!fits && row.temperature() >= COLDEST) {
      return Optional.of(said(block, PracticeVocabulary.STEAM_LIQUID, "liquid", liquid, row));
    }
    return isNear(row.vapour(), vapour)
        ? Optional.empty()
        : Optional.of(said(block, PracticeVocabulary.STEAM_VAPOUR, "vapour", vapour, row));
  }

  private static boolean isNear(double figure, double usual) {
    return Math.abs(figure - usual) <= Math.max(usual * PART, NEAR);
  }

  /** Whether liquid and vapour are those of one other temperature. */
  private static boolean fitsOther(Row row) {
    double other = row.liquid() / LIQUID;
    return other <= HOTTEST && Math.abs(row.vapour() - VAPOUR - RISE * other) <= NEAR * 2;
  }

  private static Finding said(Fields block, Key<Text> at, String what, double figure, Row row) {
    boolean temperature = at.equals(PracticeVocabulary.STEAM_TEMPERATURE);
    String sentence =
        temperature
            ? Figures.plain(row.temperature())
                + " °C does not go with a liquid of "
                + Figures.plain(row.liquid())
                + " kJ/kg, which is that of about "
                + Math.round(row.liquid() / LIQUID)
                + " °C"
            : "at "
                + Figures.plain(row.temperature())
                + " °C the "
                + what
                + " holds about "
                + Math.round(figure)
                + " kJ/kg, not "
                + Figures.plain(
                    at.equals(PracticeVocabulary.STEAM_LIQUID) ? row.liquid() : row.vapour())
                + " kJ/kg";
    return Finding.error(SteamReader.ROWS, block.placeOf(at), sentence)
        .helping("look for a slipped decimal point, and copy the row again from a steam table");
  }
}
