package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** On what a figure is told. Where none is written it is as fed. */
public sealed interface Basis {
  Span span();

  /** {@code on dry matter}. */
  record OnDryMatter(Span span) implements Basis {}

  /** {@code at 12 % moisture}. */
  record AtMoisture(Amount moisture, Span span) implements Basis {}
}
