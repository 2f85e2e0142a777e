package dev.pellucid.engine.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.weighing.InDryer.Hours;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WeighingPlanTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final String TROUT = "trout/TG-44.recipe";

  private static final FeedTables TABLES = Pantry.of(Example.whole()).stocked().tables();

  private static Plant named(FeedTables tables, String plant) {
    return Optional.ofNullable(tables.plants().get(plant)).orElseThrow();
  }

  private static Plant at(String plant) {
    return named(TABLES, plant);
  }

  private static ComputedFeed feed(String path) {
    return EXAMPLE.feed(path, UnaryOperator.identity());
  }

  private static WeighingPlan plan(String path, double kg, Plant plant) {
    return WeighingPlanner.of(plant, TABLES.practice())
        .flatMap(planner -> planner.plan(feed(path), kg))
        .orElseThrow();
  }

  @Test
  void twoPlantsWeighTheSameRecipeDifferently() {
    WeighingPlan shed = plan(GROWER, 120, at("farm-shed"));
    WeighingPlan mill = plan(GROWER, 120, at("river-mill"));
    assertNotEquals(shed.mix(), mill.mix());
    assertEquals("Paddle mixer", shed.loads().orElseThrow().mixer().title());
    assertEquals(2, shed.loadCount());
  }

  @Test
  void eachWeightIsWholeDivisionsOfTheScaleBesideIt() {
    for (Plant plant : TABLES.plants().values()) {
      for (String path : EXAMPLE.recipes()) {
        WeighingPlan plan = plan(path, 60, plant);
        Stream.concat(plan.mix().stream(), plan.coat().stream())
            .flatMap(line -> line.placing() instanceof Placing.Placed p ? Stream.of(p) : null)
            .map(Placing.Placed::weight)
            .forEach(
                weight -> {
                  double divisions = weight.each() / weight.scale().division();
                  assertEquals(Math.rint(divisions), divisions, 1e-6);
                  assertTrue(plant.scales().contains(weight.scale()));
                });
      }
    }
  }

  /** 0.5 % of the batch shared by its loads, and 2 g each time it is weighed out. */
  @Test
  void overagePerWeighingIsAddedInEachLoadWhateverTheBatch() {
    for (double kg : new double[] {20, 60, 150}) {
      WeighingPlan plan = plan(GROWER, kg, at("farm-shed"));
      WeighingLine vitamins =
          plan.mix().stream()
              .filter(line -> line.line().material().name().equals("VIT-WW"))
              .findFirst()
              .orElseThrow();
      assertEquals(0.005 * kg / plan.loadCount() + 0.002, vitamins.target(), 1e-12);
      int index = vitamins.line().index();
      double onTop = plan.asRounded(feed(GROWER).recipe()).onTop().get(index) * kg / 100;
      assertEquals(0.002 * plan.loadCount() * vitamins.actual() / vitamins.target(), onTop, 1e-12);
    }
  }

  @Test
  void loadsAreNeverFullerThanTheMixerTakes() {
    Plant shed = at("farm-shed");
    for (double kg : new double[] {1, 20, 37, 60, 150, 999, 20_000}) {
      Loads loads = plan(GROWER, kg, shed).loads().orElseThrow();
      double most = loads.mixer().fillHigh() + 1e-9;
      assertTrue(loads.dryFill() <= most && loads.wetFill() <= most, "kg " + kg);
      assertTrue(loads.wetFill() >= loads.dryFill(), "kg " + kg);
      if (loads.count() > 1) {
        double fewer = loads.wetFill() * loads.count() / (loads.count() - 1);
        assertTrue(fewer > most, "one load fewer would do for kg " + kg);
      }
    }
  }

  @Test
  void aLittleInALargeMixerIsSaid() {
    assertTrue(!plan(GROWER, 5, at("farm-shed")).loads().orElseThrow().fills());
    assertTrue(plan(GROWER, 50, at("farm-shed")).loads().orElseThrow().fills());
  }

  @Test
  void aDilutionIsTakenOutOfTheCarriersLine() {
    WeighingPlan plan = plan(GROWER, 2, at("farm-shed"));
    List<WeighingLine> diluted =
        plan.mix().stream().filter(line -> line.dilution().isPresent()).toList();
    assertTrue(!diluted.isEmpty());
    double carried = diluted.stream().mapToDouble(l -> l.dilution().orElseThrow().carried()).sum();
    WeighingLine carrier =
        plan.mix().stream().filter(line -> line.taken() > 0).findFirst().orElseThrow();
    assertEquals(carried, carrier.taken(), 1e-12);
    assertEquals(carrier.target(), carrier.actual(), 0.01 * carrier.target());
  }

  @Test
  void whatIsWeighedIsCloseToWhatIsWritten() {
    for (String path : EXAMPLE.recipes()) {
      ResolvedRecipe recipe = feed(path).recipe();
      Weighing written = Weighing.of(recipe, 500);
      Weighing rounded = plan(path, 500, at("river-mill")).asRounded(recipe);
      for (int i = 0; i < written.inFeed().size(); i++) {
        double share = written.inFeed().get(i);
        assertEquals(share, rounded.inFeed().get(i), 0.02 * share + 1e-12, path + " line " + i);
      }
    }
  }

  @Test
  void traysAndRounds() {
    // 60 kg of CG-36 is 67.95 kg wet: 34 trays of 2 kg, two rounds of 24.
    assertEquals(new Trays(2, 34, 2), dried(GROWER, 60, at("farm-shed")).trays().orElseThrow());
    // 57 kg of kernel and 2.4 kg of coat: three rounds of 20 kg.
    assertEquals(3, plan(GROWER, 60, at("farm-shed")).coatRounds());
  }

  private static InDryer dried(String path, double kg, Plant plant) {
    return plan(path, kg, plant).dryer().orElseThrow();
  }

  @Test
  void roundsOfTraysTakeTheTimeOfTheStepEach() {
    InDryer oven = dried(GROWER, 60, at("farm-shed"));
    assertEquals(new Hours(6, 12), oven.each().orElseThrow());
    assertEquals(new Hours(12, 24), oven.all().orElseThrow());
  }

  /** 970 kg of wet TG-44 are two fillings of 500 kg; 150 kg of water at 120 kg an hour. */
  @Test
  void aBedIsFilledAndTakesAtLeastTheTimeOfItsWater() {
    InDryer bed = dried(TROUT, 1000, at("river-mill"));
    assertEquals(Optional.empty(), bed.trays());
    assertEquals(2, bed.rounds());
    assertEquals(150.07, bed.water(), 0.01);
    assertEquals(150.07 / 2 / 120, bed.hoursByWater().orElseThrow(), 1e-3);
    assertEquals(new Hours(1, 2), bed.each().orElseThrow());
    assertEquals(new Hours(2, 4), bed.all().orElseThrow());
    InDryer slow = dried(TROUT, 1000, mill("kind: bed", "water-per-hour: 50 kg"));
    assertEquals(150.07 / 2 / 50, slow.each().orElseThrow().low(), 1e-3);
    assertEquals(2, slow.each().orElseThrow().high());
  }

  /** A belt that holds 500 kg for one to two hours is through with 970 kg in twice that, nearly. */
  @Test
  void aBeltRunsOn() {
    InDryer belt = dried(TROUT, 1000, mill("kind: belt", "water-per-hour: 120 kg"));
    assertEquals(1, belt.rounds());
    assertEquals(969.38 / 500, belt.all().orElseThrow().low(), 1e-3);
    assertEquals(2 * 969.38 / 500, belt.all().orElseThrow().high(), 1e-3);
    InDryer slow = dried(TROUT, 1000, mill("kind: belt", "water-per-hour: 20 kg"));
    assertEquals(150.07 / 20, slow.all().orElseThrow().low(), 1e-3);
    assertEquals(150.07 / 20, slow.all().orElseThrow().high(), 1e-3);
  }

  @Test
  void theFirstDryerForTheTemperatureIsTaken() {
    String oven = "{name: Oven, kind: trays, temperature: 40 to 70 °C, tray-load: 2 kg}";
    Plant both =
        mill("dryers:\n", "dryers:\n  - " + oven + "\n", "kind: bed", "water-per-hour: 120 kg");
    assertEquals("Oven", dried(GROWER, 60, both).dryer().title());
    assertEquals("Bed dryer", dried(TROUT, 60, both).dryer().title());
    assertTrue(plan(GROWER, 60, at("river-mill")).dryer().isEmpty());
  }

  private static Plant mill(String kind, String water) {
    return mill("dryers:\n", "dryers:\n", kind, water);
  }

  private static Plant mill(String heading, String dryers, String kind, String water) {
    Pantry pantry = Pantry.of(Example.whole());
    String text =
        pantry
            .text("plant/river-mill.yaml")
            .replace(heading, dryers)
            .replace("kind: bed", kind)
            .replace("water-per-hour: 120 kg", water);
    pantry.with("plant/river-mill.yaml", text);
    return named(pantry.stocked().tables(), "river-mill");
  }

  @Test
  void withoutScalesThereIsNoPlan() {
    Pantry pantry = Pantry.of(Example.whole());
    pantry.with("plant/river-mill.yaml", "name: Mill\nshrink: 1 %\nair-temperature: 20 °C\n");
    FeedTables tables = pantry.stocked().tables();
    Plant mill = named(tables, "river-mill");
    assertTrue(WeighingPlanner.of(mill, tables.practice()).isEmpty());
  }
}
