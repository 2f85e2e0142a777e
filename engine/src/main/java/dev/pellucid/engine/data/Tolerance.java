package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far an analysis may lie from the label, on either side of it, by bands of the declared
 * figure.
 *
 * @param below bands by rising figure, for what is found below the label; the last has no end
 * @param above bands for what is found above it
 * @param inDeclaredUnit whether the bands count in the unit in which the label declares, as where a
 *     law says "1000 units or more"; else in the base of the nutrient's kind
 * @param place where it is written
 */
public record Tolerance(List<Band> below, List<Band> above, boolean inDeclaredUnit, Span place) {
  public Tolerance {
    below = List.copyOf(below);
    above = List.copyOf(above);
  }

  /** On which side of the label a figure lies. */
  public enum Side {
    BELOW,
    ABOVE
  }

  /**
   * What is taken for declared figures under an end: {@code absolute + relative × declared}.
   *
   * @param under the end, not in the band; empty in the last band
   * @param absolute the part that does not grow with the declared figure
   * @param relative the part of the declared figure
   * @param noLimit whether any difference is taken
   */
  public record Band(OptionalDouble under, double absolute, double relative, boolean noLimit) {
    double at(double declared) {
      return absolute + relative * declared;
    }

    /** So many times as much. */
    Band times(double factor) {
      return new Band(under, absolute * factor, relative * factor, noLimit);
    }
  }

  /**
   * The difference that is taken on a side, in the base of the unit's kind; empty where any is.
   *
   * @param declared in the base of the unit's kind
   * @param unit in which the label declares it
   */
  public OptionalDouble allowed(Side side, double declared, Unit unit) {
    double figure = inDeclaredUnit ? unit.fromBase(declared) : declared;
    Band band = band(side == Side.BELOW ? below : above, figure);
    if (band.noLimit()) {
      return OptionalDouble.empty();
    }
    double allowed = band.at(figure);
    return OptionalDouble.of(inDeclaredUnit ? unit.toBase(allowed) : allowed);
  }

  private static Band band(List<Band> bands, double figure) {
    return bands.stream()
        .filter(band -> band.under().isEmpty() || figure < band.under().getAsDouble())
        .findFirst()
        .orElseThrow();
  }
}
