package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.math.BigDecimal;

/**
 * {@code min 35 %}. Between two masses a ratio may have no unit; then {@code amount} is a bare
 * number.
 */
public record Bound(Side side, Limit limit, Span span) {

  /** Which side. */
  public enum Side {
    MIN("min"),
    MAX("max");

    private final String word;

    Side(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** The figure not to pass. */
  public sealed interface Limit {
    String asWritten();

    BigDecimal figure();

    /** With a unit. */
    record Measured(Amount amount) implements Limit {
      @Override
      public String asWritten() {
        return amount.asWritten();
      }

      @Override
      public BigDecimal figure() {
        return amount.figure();
      }
    }

    /** Without, in a ratio: {@code calcium : phosphorus min 1.1}. */
    record Bare(Numeral number) implements Limit {
      @Override
      public String asWritten() {
        return number.text();
      }

      @Override
      public BigDecimal figure() {
        return number.value();
      }
    }
  }
}
