package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** {@code VM-CAT 10 % for handling}. */
public record OverageLine(Target target, Extra extra, Word purpose, Span span) {

  /** Which lines the rule is for. */
  public sealed interface Target {
    Span span();

    /** An ingredient, a group or a code. */
    record Named(Word name) implements Target {
      @Override
      public Span span() {
        return name.span();
      }
    }

    /** {@code lines below 0.5 %}. */
    record LinesBelow(Amount share, Span span) implements Target {}
  }

  /** How much more. */
  public sealed interface Extra {
    Span span();

    /** {@code 10 %} of the line. */
    record OfLine(Amount share) implements Extra {
      @Override
      public Span span() {
        return share.span();
      }
    }

    /** {@code 2 g per weighing}. */
    record PerWeighing(Amount mass, Span span) implements Extra {}
  }
}
