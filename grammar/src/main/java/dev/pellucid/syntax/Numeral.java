package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.math.BigDecimal;

/** A number as it was written: {@code 2.50} stays {@code 2.50}. */
public record Numeral(String text, Span span) {
  /** The exact value. */
  public BigDecimal value() {
    return new BigDecimal(text);
  }
}
