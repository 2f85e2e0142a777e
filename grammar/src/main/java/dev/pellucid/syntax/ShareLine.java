package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.Optional;

/** A line of {@code mix}, {@code coat} or {@code carrier}. */
public record ShareLine(Word subject, Share share, Optional<Range> within, Span span) {

  /** How much of the subject. */
  public sealed interface Share {
    Span span();

    /** {@code 18.00 %}. */
    record Stated(Amount amount) implements Share {
      @Override
      public Span span() {
        return amount.span();
      }
    }

    /** {@code rest}: what the other lines leave. */
    record Rest(Span span) implements Share {}
  }
}
