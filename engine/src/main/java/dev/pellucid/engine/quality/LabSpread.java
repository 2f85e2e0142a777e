package dev.pellucid.engine.quality;

import dev.pellucid.measure.Kind;

/**
 * How far the figure of a good laboratory is off by itself: one standard deviation between
 * laboratories that analyse the same sample.
 *
 * <p>Of a part of a mass {@code c} it is {@code 0.02 c^0.8495}, the curve that collaborative trials
 * follow whatever is analysed (Horwitz, as AMC Technical Brief 17 of the Royal Society of Chemistry
 * tells it), and {@code 0.01 c^0.5} above 13.8 % (Thompson, Analyst 125, 2000, from memory). For a
 * crude protein of 48 % that is 0.69 points; a collaborative study found 0.52 (Sweeney, J. AOAC,
 * 1989, from its abstract). Of what is no part of a mass it is 5 % of the figure: common practice,
 * no source.
 */
public final class LabSpread {
  private static final double HIGH = 0.138;
  private static final double OF_OTHERS = 0.05;

  private LabSpread() {}

  /** Of a figure in the base of its kind. */
  public static double of(double figure, Kind kind) {
    if (kind != Kind.SHARE) {
      return OF_OTHERS * Math.abs(figure);
    }
    double part = Math.max(0, figure);
    return part > HIGH ? 0.01 * Math.sqrt(part) : 0.02 * Math.pow(part, 0.8495);
  }
}
