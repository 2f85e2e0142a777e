package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.function.Function;

/**
 * A line of {@code mix}, {@code coat} or {@code carrier}.
 *
 * @param subject an ingredient or premix, or the recipe whose feed is worked in again
 * @param rework whether {@code rework} stands before the subject
 * @param within how far the share may move, where the line says so
 * @param step of what the share is a whole multiple, where the line says so
 */
public record ShareLine(
    Word subject,
    boolean rework,
    Share share,
    Optional<Within> within,
    Optional<StepSize> step,
    Span span) {

  /**
   * {@code within 2 to 10 % or none}.
   *
   * @param orNone the words that let it stand at zero too, below the low end
   */
  public record Within(Range range, Optional<OrNone> orNone, Span span) {}

  /** The words {@code or none}. */
  public record OrNone(Span span) {}

  /** {@code step 0.5 %}. */
  public record StepSize(Amount size, Span span) {}

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
