package dev.pellucid.engine.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the sheet of a premix tells beside that of a feed.
 *
 * @param dose as written; empty where the premix has none
 * @param needs what one batch of each approved feed, and of each premix that holds this one, takes;
 *     empty where nothing approved takes it
 * @param bag kg that the batch is rounded up to whole ones of
 * @param forTheMixer whether it is more than that, so that a mixer mixes it evenly
 */
public record Premixing(
    String dose, List<Need> needs, Mass bag, boolean forTheMixer, List<Supplied> supplied) {
  public Premixing {
    needs = List.copyOf(needs);
    supplied = List.copyOf(supplied);
  }

  /** What one batch of a feed or premix takes, overage included. */
  public record Need(String code, Mass kg) {
    private static final int TO_A_MILLIGRAM = 6;

    /** Of a feed that no sheet is made of. */
    public static Need of(String code, double kg) {
      return new Need(code, Mass.of(kg, TO_A_MILLIGRAM));
    }
  }

  /**
   * One nutrient that the premix is made to bring.
   *
   * @param unit of all four
   * @param asked per kg of weighed feed at the dose
   * @param designed per kg of premix: asked over dose
   * @param fresh per kg of premix as it will be, with overage for stability and what other parts
   *     bring
   * @param stored what is left of that at the end of the shelf life; empty where it is not known
   */
  public record Supplied(
      String title,
      String unit,
      double asked,
      double designed,
      double fresh,
      OptionalDouble stored) {}
}
