package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.OptionalDouble;

/**
 * How much of a nutrient an ingredient holds, in the base of its kind, as fed.
 *
 * <p>A value has {@code low = high}; {@code none} is zero at both ends; {@code below X} is 0 to X.
 *
 * @param spread one standard deviation between lots, where it was written with {@code ±}
 */
public record Content(
    double low, double high, OptionalDouble spread, String asWritten, Span place, Source source) {
  public Content {
    if (!(low >= 0 && low <= high && high < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a content: " + low + " to " + high);
    }
  }

  /** Whether only the most is told. */
  public boolean isBound() {
    return low < high;
  }
}
