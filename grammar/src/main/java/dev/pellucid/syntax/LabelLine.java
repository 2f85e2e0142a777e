package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * A plain figure is a declaration and stands in {@code declared}; {@code min} and {@code max} are
 * guarantees and stand in {@code guaranteed}. One of the two is there.
 */
public record LabelLine(
    Word nutrient, Optional<Amount> declared, List<Bound> guaranteed, Span span) {
  public LabelLine {
    guaranteed = List.copyOf(guaranteed);
  }
}
