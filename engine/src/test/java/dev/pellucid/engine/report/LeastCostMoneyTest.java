package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money of least cost in words. */
class LeastCostMoneyTest {
  @ParameterizedTest
  @CsvSource({"1.714, 1.71 EUR/t more", "-1.714, 1.71 EUR/t less", "0, 0.00 EUR/t more"})
  void noFigureIsBelowZero(double more, String words) {
    assertEquals(words, new LeastCostMoney("EUR").moreOrLess(more));
  }
}
