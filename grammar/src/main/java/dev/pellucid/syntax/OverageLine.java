package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.function.Function;

/** {@code VM-CAT 10 % for handling}. */
public record OverageLine(Target target, Extra extra, Word purpose, Span span) {

  /** Which lines the rule is for. */
  public sealed interface Target {
    Span span();

    /** Applies the one of these that is for its kind. */
    <R> R byKind(Function<Named, R> named, Function<LinesBelow, R> linesBelow);

    /** An ingredient, a group or a code. */
    record Named(Word name) implements Target {
      @Override
      public Span span() {
        return name.span();
      }

      @Override
      public <R> R byKind(Function<Named, R> named, Function<LinesBelow, R> linesBelow) {
        return named.apply(this);
      }
    }

    /** {@code lines below 0.5 %}. */
    record LinesBelow(Amount share, Span span) implements Target {
      @Override
      public <R> R byKind(Function<Named, R> named, Function<LinesBelow, R> linesBelow) {
        return linesBelow.apply(this);
      }
    }
  }

  /** How much more. */
  public sealed interface Extra {
    Span span();

    /** Applies the one of these that is for its kind. */
    <R> R byKind(Function<OfLine, R> ofLine, Function<PerWeighing, R> perWeighing);

    /** {@code 10 %} of the line. */
    record OfLine(Amount share) implements Extra {
      @Override
      public Span span() {
        return share.span();
      }

      @Override
      public <R> R byKind(Function<OfLine, R> ofLine, Function<PerWeighing, R> perWeighing) {
        return ofLine.apply(this);
      }
    }

    /** {@code 2 g per weighing}. */
    record PerWeighing(Amount mass, Span span) implements Extra {
      @Override
      public <R> R byKind(Function<OfLine, R> ofLine, Function<PerWeighing, R> perWeighing) {
        return perWeighing.apply(this);
      }
    }
  }
}
