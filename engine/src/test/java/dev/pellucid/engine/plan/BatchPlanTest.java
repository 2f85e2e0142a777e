package dev.pellucid.engine.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.syntax.Step;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class BatchPlanTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final String GROWER = "catfish/CG-36.recipe";

  @Test
  @DisplayName("tray of 2000 g at 24.58 %: 1657.7 g at 9 % (common practice, no source)")
  void tray() {
    double before = 29.0 / 118;
    assertEquals(1657.7, 1000 * TrayChart.weight(2, before, 0.09), 0.05);
    assertEquals(1714.2, 1000 * TrayChart.weight(2, before, 0.12), 0.05);
    assertEquals(1604.8, 1000 * TrayChart.weight(2, before, 0.06), 0.05);
    TrayChart chart = TrayChart.of(2, true, before, List.of(0.10, 0.09), 0.09);
    assertEquals(3, chart.rows().size());
    assertEquals(0.246, chart.rows().get(1).before(), 1e-12);
    assertEquals(2000 * 0.754 / 0.91, 1000 * chart.rows().get(1).weights().get(1), 1e-9);
    assertTrue(chart.rows().get(0).weights().get(1) > chart.rows().get(1).weights().get(1));
  }

  @Test
  void aChartNeverWetsAFeed() {
    assertEquals(2, TrayChart.of(2, true, 0.095, List.of(0.09), 0.09).rows().size());
  }

  @Test
  void theGrowerInFigures() {
    BatchPlan plan = EXAMPLE.plan(GROWER);
    assertEquals("60.000", plan.balance().weighed().inKg());
    Weighed vitamins = line(plan, "VIT-WW");
    assertEquals("300.00", vitamins.target().inGrams());
    assertEquals("2.00", vitamins.handling().inGrams());
    assertEquals("302.00", vitamins.total().inGrams());
    assertTrue(vitamins.micro());
    assertFalse(line(plan, "maize").micro());
    Weighed oil = line(plan, "soybean-oil");
    assertEquals(Place.COAT, oil.place());
    assertEquals(1.8 / 56.830, oil.perKgKernel().asDouble(), 5e-6);
    assertEquals(0.18 * 57.588, plan.balance().water().asDouble(), 5e-4);
    assertEquals("57.761", plan.balance().bagged().inKg());
    assertEquals(List.of(3.0, 6.0, 9.0, 12.0), drying(plan).checks().stream().sorted().toList());
    assertEquals(2, drying(plan).chart().loaded());
    assertEquals(List.of(0.10, 0.09, 0.08), drying(plan).chart().targets());
    assertEquals(Optional.of(new Storing(60, LocalDate.of(2027, 1, 24))), plan.storing());
    Packing packing = plan.packing().orElseThrow();
    assertEquals(2, packing.full());
    assertEquals("7.761", packing.remainder().inKg());
  }

  @Test
  void aFinishedBatchIsSolvedBack() {
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER, ExamplePlans.CLEAN, text -> text.replace("60 kg weighed", "500 kg finished"));
    assertEquals("500.00", plan.balance().bagged().inKg());
    assertEquals(20, plan.packing().orElseThrow().full());
    assertFalse(plan.packing().orElseThrow().hasRemainder());
  }

  @Test
  void aBatchWithoutASizeIsAHundredKg() {
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER, ExamplePlans.CLEAN, text -> text.replace("  batch     60 kg weighed\n", ""));
    assertFalse(plan.sizeTold());
    assertEquals("100.000", plan.balance().weighed().inKg());
  }

  @Test
  void theCoatStandsAfterTheDryerAndBeforeTheBag() {
    List<Step> steps = EXAMPLE.plan(GROWER).tasks().stream().map(Task::step).toList();
    assertEquals(steps.indexOf(Step.DRY) + 1, steps.indexOf(Step.COAT));
    BatchPlan unnamed =
        EXAMPLE.plan(
            GROWER,
            ExamplePlans.CLEAN,
            text ->
                text.replace("  coat       method            hand\n", "")
                    .replace("  cool       temperature       25 °C\n", ""));
    steps = steps.stream().filter(step -> step != Step.COOL).toList();
    assertEquals(steps, unnamed.tasks().stream().map(Task::step).toList());
  }

  @Test
  void aDraftSaysWhy() {
    assertEquals(List.of(), EXAMPLE.plan(GROWER).draftBecause());
    Provenance unclean = new Provenance("1a2b3c4", false, ExamplePlans.DAY);
    assertTrue(EXAMPLE.plan(GROWER, unclean, text -> text).draft());
    Provenance none = new Provenance("", true, ExamplePlans.DAY);
    assertTrue(EXAMPLE.plan(GROWER, none, text -> text).draft());
    assertEquals(
        List.of("the status of the recipe is draft, not approved"),
        changed("status    approved", "status    draft").draftBecause());
    assertEquals(
        List.of("limits not kept: 1"),
        changed("crude-protein                min 34 %", "crude-protein min 44 %").draftBecause());
  }

  @Test
  void cautionsStandWhereTheyBite() {
    BatchPlan plan = EXAMPLE.plan(GROWER);
    assertTrue(plan.mixCautions().stream().anyMatch(one -> one.words().contains("Mask")));
    Task coat = plan.tasks().stream().filter(t -> t.step() == Step.COAT).findFirst().orElseThrow();
    assertTrue(
        coat.warned().first().stream().anyMatch(one -> one.words().contains("Smell the oil")));
    assertTrue(plan.mixCautions().stream().noneMatch(o -> o.words().contains("Smell the oil")));
  }

  @Test
  void expectationsHoldNeitherCostNorInclusion() {
    List<String> titles = EXAMPLE.plan(GROWER).expected().stream().map(e -> e.title()).toList();
    assertTrue(titles.contains("Crude protein"), titles.toString());
    assertTrue(titles.stream().noneMatch(t -> t.contains("cost") || t.contains("inclusion")));
  }

  private static BatchPlan changed(String from, String to) {
    return EXAMPLE.plan(GROWER, ExamplePlans.CLEAN, text -> text.replace(from, to));
  }

  private static Weighed line(BatchPlan plan, String name) {
    return plan.weighing().stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
  }

  private static Task.Drying drying(BatchPlan plan) {
    return plan.tasks().stream().flatMap(t -> t.drying().stream()).findFirst().orElseThrow();
  }
}
