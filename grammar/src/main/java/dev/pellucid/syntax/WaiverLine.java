package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * {@code crude-fibre max 6 % until 2027-03-31 by "quality manager" because "rice bran season"}.
 * What is not written is absent here: whether it may be is a matter of meaning.
 *
 * @param until the day as written, whether or not it is one
 */
public record WaiverLine(
    Left left,
    List<Bound> bounds,
    Optional<Basis> basis,
    Optional<Word> until,
    Optional<Quoted> by,
    Optional<Quoted> because,
    Span span) {
  public WaiverLine {
    bounds = List.copyOf(bounds);
  }
}
