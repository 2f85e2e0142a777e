package dev.pellucid.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class SumTest {
  private final Sum sum = new Sum();

  /** Ten tenths in plain doubles come to 0.9999999999999999. */
  @Test
  void tenTenthsAreOne() {
    for (int i = 0; i < 10; i++) {
      sum.add(0.1);
    }
    assertEquals(1, sum.total());
  }

  @Test
  void nothingIsNought() {
    assertEquals(0, sum.total());
  }

  /** Held against exact decimals, and against the sum of the JDK. */
  @Test
  void itIsExactToTheLastFigureOfADouble() {
    double[] figures = new Random(20_261_128).doubles(1_000, 1e-6, 1e3).toArray();
    BigDecimal exact = BigDecimal.ZERO;
    for (double figure : figures) {
      sum.add(figure);
      exact = exact.add(new BigDecimal(figure));
    }
    assertEquals(exact.doubleValue(), sum.total(), Math.ulp(sum.total()));
    assertEquals(DoubleStream.of(figures).sum(), sum.total());
  }
}
