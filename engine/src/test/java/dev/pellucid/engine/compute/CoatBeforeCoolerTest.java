package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.syntax.Step;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * KG-33 of the example, a steamed pellet that is cooled to 11 %, with its oil put on while it is
 * warm. The sums are done by hand from what goes in.
 */
class CoatBeforeCoolerTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final String PATH = "carp/KG-33.recipe";

  private static String coatFirst(String text) {
    String coat = text.lines().filter(line -> line.startsWith("  coat ")).findFirst().orElseThrow();
    String without = text.replace(coat + "\n", "");
    int cool = without.indexOf("  cool ");
    return without.substring(0, cool) + coat + "\n" + without.substring(cool);
  }

  @Test
  void theCoolerTakesItsWaterFromTheCoatedFeed() {
    Balance balance = EXAMPLE.feed(PATH, CoatBeforeCoolerTest::coatFirst).balances().expected();
    Balance asWas = EXAMPLE.feed(PATH, UnaryOperator.identity()).balances().expected();
    double coatDry = asWas.finished() * (1 - asWas.moisture()) - asWas.dryMatter();
    assertEquals((balance.dryMatter() + coatDry) / (1 - 0.11), balance.finished(), 1e-9);
    assertEquals(0.11, balance.moisture(), 1e-12);
    assertEquals(balance.mix() + balance.waterAdded() + balance.steam(), balance.kernel(), 1e-9);
    Stage coat = stage(balance, Step.COAT);
    assertEquals(balance.kernel(), coat.before(), 1e-9);
    assertEquals(balance.coat(), coat.added(), 1e-12);
    assertEquals(balance.finished(), stage(balance, Step.COOL).after(), 1e-9);
  }

  /** Without the move the kernel is dried, and the oil dilutes what water is left. */
  @Test
  void withTheCoolerFirstTheKernelIsCooled() {
    Balance balance = EXAMPLE.feed(PATH, UnaryOperator.identity()).balances().expected();
    assertEquals(balance.dryMatter() / (1 - 0.11), balance.kernel(), 1e-9);
    assertEquals(balance.kernel() + balance.coat(), balance.finished(), 1e-9);
  }

  /** Oil that goes on cold leaves less heat to evaporate with. */
  @Test
  void coldOilTakesHeatFromTheKernel() {
    Stage before =
        stage(EXAMPLE.feed(PATH, UnaryOperator.identity()).balances().expected(), Step.COOL);
    Stage after =
        stage(EXAMPLE.feed(PATH, CoatBeforeCoolerTest::coatFirst).balances().expected(), Step.COOL);
    double one = before.evaporable().orElseThrow();
    double two = after.evaporable().orElseThrow();
    assertEquals(1, two / one, 0.05);
  }

  @Test
  void theSheetCloses() {
    BatchPlan plan = EXAMPLE.plan(PATH, ExamplePlans.CLEAN, CoatBeforeCoolerTest::coatFirst);
    Task coat = plan.tasks().stream().filter(t -> t.step() == Step.COAT).findFirst().orElseThrow();
    double perKg =
        plan.weighing().stream()
            .filter(line -> line.place() == Place.COAT)
            .mapToDouble(line -> line.perKgKernel().asDouble())
            .sum();
    assertEquals(coat.added().asDouble(), coat.before().asDouble() * perKg, 0.01);
    assertEquals(coat.before(), plan.balance().kernel());
    Task last = plan.tasks().get(plan.tasks().size() - 1);
    assertEquals(plan.balance().finished(), last.after());
    Task cool = plan.tasks().stream().filter(t -> t.step() == Step.COOL).findFirst().orElseThrow();
    assertEquals(plan.balance().evaporatedCoated(), cool.evaporated());
    assertEquals(0.11, cool.moistureAfter(), 1e-12);
  }

  private static Stage stage(Balance balance, Step step) {
    return balance.stages().stream()
        .filter(stage -> stage.pass().step() == step)
        .findFirst()
        .orElseThrow();
  }
}
