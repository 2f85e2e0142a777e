package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
  @Test
  @DisplayName("quantiles agree with the table of Abramowitz and Stegun, 26.1 (from memory)")
  void quantiles() {
    assertEquals(1.644854, Normal.quantile(0.95), 5e-7);
    assertEquals(2.326348, Normal.quantile(0.99), 5e-7);
    assertEquals(1.281552, Normal.quantile(0.90), 5e-7);
    assertEquals(0, Normal.quantile(0.5), 1e-12);
  }

  /** The areas from zero to x, with five decimals; read in copies of the table. */
  @ParameterizedTest
  @DisplayName("areas agree with the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1")
  @CsvSource({
    "0.01, 0.00399",
    "0.1, 0.03983",
    "0.25, 0.09871",
    "0.5, 0.19146",
    "0.67, 0.24857",
    "0.84, 0.29955",
    "1.0, 0.34134",
    "1.28, 0.39973",
    "1.5, 0.43319",
    "1.64, 0.4495",
    "1.65, 0.45053",
    "1.96, 0.475",
    "2.0, 0.47725",
    "2.33, 0.4901",
    "2.5, 0.49379",
    "3.0, 0.49865",
    "3.09, 0.499",
    "3.5, 0.49977",
    "4.0, 0.49997",
  })
  void areas(double x, double area) {
    assertEquals(0.5 + area, Normal.below(x), 5.1e-6);
    assertEquals(0.5 - area, Normal.below(-x), 5.1e-6);
  }

  /** The last line of the table of Student's t, which is that of the normal distribution. */
  @ParameterizedTest
  @DisplayName(
      "quantiles agree with the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2")
  @CsvSource({
    "0.90, 1.282",
    "0.95, 1.645",
    "0.975, 1.960",
    "0.99, 2.326",
    "0.995, 2.576",
    "0.999, 3.090",
  })
  void critical(double part, double quantile) {
    assertEquals(quantile, Normal.quantile(part), 5.1e-4);
    assertEquals(-quantile, Normal.quantile(1 - part), 5.1e-4);
  }

  @Test
  void theQuantileIsWhereThePartLiesBelow() {
    for (int thousandth = 1; thousandth < 1000; thousandth++) {
      double part = thousandth / 1000.0;
      assertEquals(part, Normal.below(Normal.quantile(part)), 1e-14);
    }
  }

  @Test
  void theMiddlesOfEqualParts() {
    double[] middles = Normal.middles(2000);
    for (int i = 0; i < middles.length; i++) {
      assertEquals((i + 0.5) / 2000, Normal.below(middles[i]), 1e-14);
      assertEquals(-middles[i], middles[middles.length - 1 - i]);
      assertTrue(i == 0 || middles[i] > middles[i - 1]);
    }
    assertEquals(0, Normal.middles(3)[1], 1e-15);
    assertEquals(Normal.quantile(5.0 / 6), Normal.middles(3)[2], 1e-12);
  }
}
