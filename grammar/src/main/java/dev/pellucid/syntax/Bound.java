package dev.pellucid.syntax;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

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

    /** The other one. */
    public Side other() {
      return this == MIN ? MAX : MIN;
    }
  }

  /** The figure not to pass. */
  public sealed interface Limit {
    String asWritten();

    BigDecimal figure();

    /** Applies the one of these that is for its kind: with a unit, or without. */
    <R> R byKind(Function<Amount, R> measured, Function<Numeral, R> bare);

    /** The amount, where the figure has a unit. */
    default Optional<Amount> measured() {
      return byKind(Optional::of, number -> Optional.empty());
    }

    /** A figure in the base of its kind, told as this one is written: in its unit, or without. */
    default double fromBase(double base) {
      return byKind(amount -> amount.unit().fromBase(base), number -> base);
    }

    /** The unit as it is known: {@code mg/kg}; empty where there is none. */
    default String unit() {
      return measured().map(amount -> amount.unit().symbol()).orElse("");
    }

    /** The unit as it was written, with the blank before it; empty where there is none. */
    default String unitAsWritten() {
      return measured().map(amount -> " " + amount.unitAsWritten().text()).orElse("");
    }

    /**
     * The unit of a difference of two such figures, with the blank before it: {@code " points"}.
     */
    default String unitOfParts() {
      return measured().filter(amount -> amount.unit() == Unit.PERCENT).isPresent()
          ? " points"
          : unitAsWritten();
    }

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

      @Override
      public <R> R byKind(Function<Amount, R> measured, Function<Numeral, R> bare) {
        return measured.apply(amount);
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

      @Override
      public <R> R byKind(Function<Amount, R> measured, Function<Numeral, R> bare) {
        return bare.apply(number);
      }
    }
  }
}
