package dev.pellucid.engine.resolve;

import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Property;
import dev.pellucid.text.Span;
import java.util.Optional;

/**
 * One line of {@code process}, its figures in the base of the property's kind.
 *
 * @param ingredient the ingredient it is for; empty: all that is in the machine
 * @param low the low end of the target; the target itself when it is one figure
 * @param high the high end
 * @param accept what is still taken
 * @param manner the word, for a property that takes one; else empty
 */
public record Setting(
    Property property,
    Optional<String> ingredient,
    double low,
    double high,
    Optional<Band> accept,
    String manner,
    ProcessLine written) {

  /** From {@code low} to {@code high}. */
  public record Band(double low, double high) {}

  /** What is aimed at: the middle of a range. */
  public double aim() {
    return (low + high) / 2;
  }

  /** What is taken: the accepted band, or the range of the target. */
  public Band band() {
    return accept.orElse(new Band(low, high));
  }

  public Span span() {
    return written.span();
  }
}
