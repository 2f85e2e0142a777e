package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.function.Function;

/**
 * {@code dry moisture 9 % accept 8 to 10 %}; an ingredient may stand before the property: {@code
 * grind soybean-meal-48 screen 0.8 mm}.
 */
public record ProcessLine(
    Step step,
    Word stepAsWritten,
    Optional<Word> ingredient,
    Property property,
    Word propertyAsWritten,
    Target target,
    Optional<Range> accept,
    Span span) {

  /** What is aimed at. */
  public sealed interface Target {
    /** Applies the one of these that is for its kind. */
    <R> R byKind(
        Function<Exactly, R> exactly, Function<Between, R> between, Function<Manner, R> manner);

    String asWritten();

    Span span();

    /** {@code 55 °C}. */
    record Exactly(Amount amount) implements Target {
      @Override
      public String asWritten() {
        return amount.asWritten();
      }

      @Override
      public Span span() {
        return amount.span();
      }

      @Override
      public <R> R byKind(
          Function<Exactly, R> exactly, Function<Between, R> between, Function<Manner, R> manner) {
        return exactly.apply(this);
      }
    }

    /** {@code 6 to 12 h}. */
    record Between(Range range) implements Target {
      @Override
      public String asWritten() {
        return range.asWritten();
      }

      @Override
      public Span span() {
        return range.span();
      }

      @Override
      public <R> R byKind(
          Function<Exactly, R> exactly, Function<Between, R> between, Function<Manner, R> manner) {
        return between.apply(this);
      }
    }

    /** {@code vacuum}. */
    record Manner(Word word) implements Target {
      @Override
      public String asWritten() {
        return word.text();
      }

      @Override
      public Span span() {
        return word.span();
      }

      @Override
      public <R> R byKind(
          Function<Exactly, R> exactly, Function<Between, R> between, Function<Manner, R> manner) {
        return manner.apply(this);
      }
    }
  }
}
