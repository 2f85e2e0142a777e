package dev.pellucid.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rounding by whole numbers comes to what exact decimals come to, at ties and beside them too. */
class RoundingTest {
  private static final MathContext READABLE = new MathContext(15, RoundingMode.HALF_EVEN);
  private static final int FIGURES = 300_000;

  private final Random random = new Random(20_261_128);

  @Test
  void fixedIsTheExactDecimalRounded() {
    for (int i = 0; i < FIGURES; i++) {
      double value = figure();
      int decimals = random.nextInt(10);
      BigDecimal exact =
          new BigDecimal(value).round(READABLE).setScale(decimals, RoundingMode.HALF_UP);
      String expected = exact.signum() == 0 ? exact.abs().toPlainString() : exact.toPlainString();
      assertEquals(expected, Figures.fixed(value, decimals), () -> value + " to " + decimals);
    }
  }

  @Test
  void plainHasFourDigitsOfTheExactDecimal() {
    for (int i = 0; i < FIGURES; i++) {
      double value = figure();
      BigDecimal exact =
          new BigDecimal(value).round(READABLE).round(new MathContext(4, RoundingMode.HALF_UP));
      BigDecimal bare = exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
      assertEquals(bare.toPlainString(), Figures.plain(value), () -> "plain " + value);
    }
  }

  @Test
  void asManyDecimalsAsFourDigitsOfTheExactDecimalTake() {
    for (int i = 0; i < FIGURES; i++) {
      double value = figure();
      BigDecimal exact =
          new BigDecimal(Math.abs(value))
              .round(READABLE)
              .round(new MathContext(4, RoundingMode.HALF_UP));
      int expected =
          value == 0 ? 3 : Math.max(0, Math.min(9, 4 - exact.precision() + exact.scale()));
      assertEquals(expected, Figures.decimals(value), () -> "decimals of " + value);
    }
  }

  /** Figures of all sizes: as they come, written with few digits, at a tie or a hair beside it. */
  private double figure() {
    double size = Math.pow(10, random.nextInt(22) - 9);
    double any = (random.nextDouble() - 0.3) * size;
    double tie = (random.nextInt(100_000) * 10 + 5) / Math.pow(10, random.nextInt(12));
    return switch (random.nextInt(6)) {
      case 0 -> any;
      case 1 -> new BigDecimal(any).round(new MathContext(3)).doubleValue();
      case 2 -> tie;
      case 3 -> Math.nextUp(tie);
      case 4 -> -Math.nextDown(tie);
      default -> random.nextInt(20) == 0 ? 0 : Math.pow(10, random.nextInt(14) - 7);
    };
  }
}
