package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class NormalTest {
  @Test
  @DisplayName("quantiles agree with the table of Abramowitz and Stegun, 26.1 (from memory)")
  void quantiles() {
    assertEquals(1.644854, Normal.quantile(0.95), 5e-7);
    assertEquals(2.326348, Normal.quantile(0.99), 5e-7);
    assertEquals(1.281552, Normal.quantile(0.90), 5e-7);
    assertEquals(0, Normal.quantile(0.5), 1e-12);
  }
}
