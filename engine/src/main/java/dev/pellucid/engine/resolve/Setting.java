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

  /** The target, and what is taken beside it, as they are written. */
  public String asWritten() {
    return written.target().asWritten()
        + written.accept().map(taken -> ", and takes " + taken.asWritten()).orElse("");
  }

  /** What is taken: the accepted band, or the range of the target. */
  public Band band() {
    return accept.isPresent() ? accept.get() : new Band(low, high);
  }

  /** The least that may be: of what is aimed at and what is taken. */
  public double least() {
    return Math.min(low, band().low());
  }

  /** The most that may be. */
  public double most() {
    return Math.max(high, band().high());
  }

  /** Whether two lines ask for one figure and take the same band. */
  boolean asksTheSameAs(Setting other) {
    return low == other.low
        && high == other.high
        && accept.equals(other.accept)
        && manner.equals(other.manner);
  }

  public Span span() {
    return written.span();
  }
}
