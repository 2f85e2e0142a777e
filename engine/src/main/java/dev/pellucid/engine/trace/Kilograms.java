package dev.pellucid.engine.trace;

import java.util.OptionalDouble;

/**
 * So many kg, as far as records tell them.
 *
 * @param told the part that is told
 * @param whole whether that is all; else there is more, and no record says how much
 */
public record Kilograms(double told, boolean whole) {
  static final Kilograms NONE = new Kilograms(0, true);
  static final Kilograms NOT_TOLD = new Kilograms(0, false);

  public Kilograms {
    if (told < 0) {
      throw new IllegalArgumentException("less than nothing: " + told);
    }
  }

  static Kilograms of(OptionalDouble kg) {
    return kg.isPresent() ? new Kilograms(kg.getAsDouble(), true) : NOT_TOLD;
  }

  Kilograms plus(Kilograms more) {
    return new Kilograms(told + more.told, whole && more.whole);
  }

  /** What is in one part of the whole that holds this; how large the part is may not be told. */
  Kilograms part(OptionalDouble part) {
    if (this.equals(NONE)) {
      return NONE;
    }
    return part.isPresent() ? new Kilograms(told * part.getAsDouble(), whole) : NOT_TOLD;
  }
}
