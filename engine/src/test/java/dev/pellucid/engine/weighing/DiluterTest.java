package dev.pellucid.engine.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Scale;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Line;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class DiluterTest {
  private static final Line CARRIER =
      ExamplePlans.open()
          .feed("catfish/CG-36.recipe", UnaryOperator.identity())
          .recipe()
          .lines()
          .get(0);
  private static final Scale ONE_GRAM = new Scale("Kitchen scale", 5, 0.001, 0.02);
  private static final Weigher WEIGHER = new Weigher(List.of(ONE_GRAM), 4, 0.025);
  private static final Diluter DILUTER = new Diluter(WEIGHER, 10);

  @Test
  @DisplayName(
      "0.3 mg/kg selenium into 20 kg from a 1 % source is 0.6 g; on a 1 g scale, two steps")
  void selenium() {
    double sourceKg = 20 * 0.3e-6 / 0.01;
    assertEquals(0.0006, sourceKg, 1e-15);
    Dilution dilution = DILUTER.plan(sourceKg, 1, CARRIER, 5).orElseThrow();
    // 20 g of source and 180 g of carrier: 1 part in 10; 6 g of it are needed, still too little.
    assertEquals(0.020, dilution.steps().get(0).strong().total(), 1e-12);
    assertEquals(0.180, dilution.steps().get(0).carrier().total(), 1e-12);
    // 20 g of that and 60 g of carrier: 1 part in 4; 24 g of it go in.
    assertEquals(2, dilution.steps().size());
    assertEquals(0.020, dilution.steps().get(1).strong().total(), 1e-12);
    assertEquals(0.060, dilution.steps().get(1).carrier().total(), 1e-12);
    assertEquals(0.024, dilution.take().total(), 1e-12);
    assertEquals(0.0006, dilution.reaches(), 1e-12);
    assertEquals(0.024 - 0.0006, dilution.carried(), 1e-12);
  }

  @Test
  void everyDilutionClosesAndLastsForAllLoads() {
    Random random = new Random(5);
    int planned = 0;
    for (int i = 0; i < 5_000; i++) {
      double perLoad = 0.02 * Math.pow(10, -4 * random.nextDouble());
      int loads = 1 + random.nextInt(12);
      Optional<Dilution> plan = DILUTER.plan(perLoad, loads, CARRIER, 50);
      if (plan.isEmpty()) {
        continue;
      }
      planned++;
      Dilution dilution = plan.get();
      double strength = 1;
      double made = Double.POSITIVE_INFINITY;
      for (Dilution.Step step : dilution.steps()) {
        assertTrue(step.strong().total() <= made + 1e-12, "a step takes more than there is");
        assertTrue(step.makes() <= 10 * step.strong().total() * 1.05, "a step goes too far");
        strength *= step.strong().total() / step.makes();
        made = step.makes();
      }
      assertEquals(strength, dilution.strength(), 1e-12);
      assertEquals(perLoad, dilution.reaches(), 0.03 * perLoad, "what reaches a load");
      assertTrue(dilution.take().total() * loads <= made * 1.03, "not enough for all loads");
      assertTrue(WEIGHER.place(dilution.take().total()) instanceof Placing.Placed);
    }
    assertTrue(planned > 4_000, "planned " + planned);
  }

  @Test
  void theCarrierMustHaveEnoughToGive() {
    assertTrue(DILUTER.plan(0.0006, 1, CARRIER, 0.02).isEmpty());
    assertTrue(DILUTER.plan(0.0006, 1, CARRIER, 0.03).isPresent());
  }

  @Test
  void fromNothingThereIsNoWay() {
    assertTrue(DILUTER.plan(1e-9, 1, CARRIER, 5).isEmpty());
  }
}
