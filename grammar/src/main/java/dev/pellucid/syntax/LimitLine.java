package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * A line of {@code limits}: at most one {@code min} and one {@code max}, in either order.
 *
 * @param confidence the share of batches that must keep the limit: {@code in 95 % of batches}
 */
public record LimitLine(
    Left left,
    List<Bound> bounds,
    Optional<Basis> basis,
    Optional<Word> source,
    Optional<Amount> confidence,
    Span span) {
  public LimitLine {
    bounds = List.copyOf(bounds);
  }
}
