package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.function.Function;

/** On what a figure is told. Where none is written it is as fed. */
public sealed interface Basis {
  Span span();

  /** Applies the one of these that is for its kind. */
  <R> R byKind(Function<OnDryMatter, R> onDryMatter, Function<AtMoisture, R> atMoisture);

  /** {@code on dry matter}. */
  record OnDryMatter(Span span) implements Basis {
    @Override
    public <R> R byKind(Function<OnDryMatter, R> onDryMatter, Function<AtMoisture, R> atMoisture) {
      return onDryMatter.apply(this);
    }
  }

  /** {@code at 12 % moisture}. */
  record AtMoisture(Amount moisture, Span span) implements Basis {
    @Override
    public <R> R byKind(Function<OnDryMatter, R> onDryMatter, Function<AtMoisture, R> atMoisture) {
      return atMoisture.apply(this);
    }
  }
}
