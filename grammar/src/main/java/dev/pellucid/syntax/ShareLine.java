package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.function.Function;

/**
 * A line of {@code mix}, {@code coat} or {@code carrier}.
 *
 * @param subject an ingredient or premix, or the recipe whose feed is worked in again
 * @param rework whether {@code rework} stands before the subject
 */
public record ShareLine(
    Word subject, boolean rework, Share share, Optional<Range> within, Span span) {

  /** How much of the subject. */
  public sealed interface Share {
    /** Applies the one of these that is for its kind. */
    <R> R byKind(Function<Stated, R> stated, Function<Rest, R> rest);

    Span span();

    /** {@code 18.00 %}. */
    record Stated(Amount amount) implements Share {
      @Override
      public Span span() {
        return amount.span();
      }

      @Override
      public <R> R byKind(Function<Stated, R> stated, Function<Rest, R> rest) {
        return stated.apply(this);
      }
    }

    /** {@code rest}: what the other lines leave. */
    record Rest(Span span) implements Share {
      @Override
      public <R> R byKind(Function<Stated, R> stated, Function<Rest, R> rest) {
        return rest.apply(this);
      }
    }
  }
}
