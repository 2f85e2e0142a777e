package dev.pellucid.engine.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Scale;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WeigherTest {
  private static final Scale GRAMS = new Scale("Gram scale", 2, 0.0001, 0.005);
  private static final Scale BENCH = new Scale("Bench scale", 15, 0.005, 0.1);
  private static final Scale PLATFORM = new Scale("Platform scale", 100, 0.05, 2);
  private static final Weigher MICRO = weigher(0.01);

  private static Weigher weigher(double allowed) {
    return new Weigher(List.of(PLATFORM, GRAMS, BENCH), 3, allowed);
  }

  private static Weight placed(Placing placing) {
    return assertInstanceOf(Placing.Placed.class, placing).weight();
  }

  @Test
  @DisplayName("the coarsest scale whose division is at most half of what it may be off")
  void coarsest() {
    assertEquals(new Weight(GRAMS, 1, 0.9, 0.009), placed(MICRO.place(0.9)));
    assertEquals(new Weight(BENCH, 1, 1.23, 0.01), placed(MICRO.place(1.23456)));
    assertEquals(new Weight(BENCH, 1, 9.5, 0.04), placed(weigher(0.005).place(9.5)));
    assertEquals(new Weight(PLATFORM, 1, 12.0, 0.1), placed(MICRO.place(12.03)));
  }

  @Test
  void whereNoneIsCoarseEnoughTheFinestThatCanCarryIt() {
    Weigher strict = weigher(0.004);
    assertEquals(new Weight(BENCH, 1, 2.005, 0.005), placed(strict.place(2.0049)));
    assertEquals(new Weight(PLATFORM, 1, 15.05, 0.05), placed(strict.place(15.03)));
  }

  @Test
  void whatNoScaleCarriesIsPartedIntoEqualWeighings() {
    assertEquals(new Weight(PLATFORM, 3, 83.3, 0.8), placed(MICRO.place(250.04)));
    Placing.TooMuch far = assertInstanceOf(Placing.TooMuch.class, MICRO.place(301));
    assertEquals(4, far.weighings());
    assertEquals(PLATFORM, far.scale());
  }

  @Test
  void belowItsLeastAScaleIsNotUsed() {
    Placing.TooLittle little = assertInstanceOf(Placing.TooLittle.class, MICRO.place(0.0049));
    assertEquals(GRAMS, little.scale());
    assertEquals(0.005, little.least());
    assertInstanceOf(Placing.Placed.class, MICRO.place(0.005));
  }

  @Test
  void halfADivisionIsNeverMoreThanTheErrorAllowed() {
    // 0.1 % of 5 g is 5 mg, and half a division is 50 mg: sensible only from 50 g.
    Placing.TooLittle little =
        assertInstanceOf(Placing.TooLittle.class, weigher(0.001).place(0.005));
    assertEquals(0.05, little.least(), 1e-12);
  }

  @Test
  void everyWeightIsWholeDivisionsAndNearItsTarget() {
    Random random = new Random(11);
    for (int i = 0; i < 20_000; i++) {
      double kg = Math.pow(10, random.nextDouble() * 5 - 2.3);
      if (MICRO.place(kg) instanceof Placing.Placed placed) {
        Weight weight = placed.weight();
        double divisions = weight.each() / weight.scale().division();
        assertEquals(Math.rint(divisions), divisions, 1e-6, "kg " + kg);
        assertTrue(weight.each() <= weight.scale().most() * (1 + 1e-9), "kg " + kg);
        assertEquals(kg, weight.total(), 0.01 * kg + 1e-12, "kg " + kg);
        assertTrue(weight.tolerance() >= weight.scale().division(), "kg " + kg);
        double digit =
            Math.pow(10, Math.ceil(Math.log10(0.01 * kg / weight.weighings() / 10) - 1e-9));
        if (digit > weight.scale().division()) {
          double digits = weight.each() / digit;
          assertEquals(Math.rint(digits), digits, 1e-6, "a digit too many for kg " + kg);
        }
      }
    }
  }
}
