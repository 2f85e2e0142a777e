package dev.pellucid.engine.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.resolve.Line.Place;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every figure that a sheet shows adds up to the sums that it shows, to the last digit. */
class SheetClosesTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final String GROWER = "catfish/CG-36.recipe";

  @Test
  void everyRecipe() {
    assertTrue(EXAMPLE.recipes().size() >= 10);
    EXAMPLE.recipes().forEach(path -> closes(EXAMPLE.plan(path)));
  }

  @Test
  void everyPremix() {
    Map<String, BatchPlan> plans = EXAMPLE.premixes();
    assertTrue(plans.size() >= 3);
    plans.values().forEach(SheetClosesTest::closes);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.5 kg weighed", "0.05 kg weighed", "7.3 kg weighed", "59.999 kg weighed",
        "20 t weighed", "0.5 kg finished", "333.333 kg finished", "1000 kg finished",
        "20 t finished"
      })
  void everyRecipeAtAnySize(String size) {
    for (String path : EXAMPLE.recipes()) {
      BatchPlan plan = sized(path, size);
      closes(plan);
      for (Weighed line : plan.weighing()) {
        double exact = line.share() / 100 * plan.balance().weighed().asDouble();
        assertEquals(exact, line.target().asDouble(), 0.015 * exact, path + " " + line.name());
      }
    }
  }

  /** Any order of the steps of any recipe is refused, or its sheet closes. */
  @Test
  void anyOrderOfStepsClosesOrIsRefused() {
    Random random = new Random(36);
    int closed = 0;
    int refused = 0;
    for (int trial = 0; trial < 400; trial++) {
      String path = EXAMPLE.recipes().get(random.nextInt(EXAMPLE.recipes().size()));
      Optional<BatchPlan> plan = EXAMPLE.planIfComputed(path, text -> stepsShuffled(text, random));
      plan.ifPresent(SheetClosesTest::closes);
      closed += plan.isPresent() ? 1 : 0;
      refused += plan.isPresent() ? 0 : 1;
    }
    assertTrue(closed > 50 && refused > 50, closed + " closed, " + refused + " refused");
  }

  /** Up to three pairs of neighbouring steps change places, so that many orders can be meant. */
  private static String stepsShuffled(String text, Random random) {
    List<String> before = new ArrayList<>();
    List<List<String>> steps = new ArrayList<>();
    List<String> after = new ArrayList<>();
    boolean within = false;
    for (String line : text.lines().toList()) {
      within = line.startsWith(" ") ? within : line.startsWith("process");
      if (within && line.startsWith("  ")) {
        String step = line.strip().split(" ", 2)[0];
        if (steps.isEmpty() || !steps.get(steps.size() - 1).get(0).strip().startsWith(step + " ")) {
          steps.add(new ArrayList<>());
        }
        steps.get(steps.size() - 1).add(line);
      } else {
        (steps.isEmpty() ? before : after).add(line);
      }
    }
    for (int swap = random.nextInt(4); swap > 0; swap--) {
      int at = random.nextInt(steps.size() - 1);
      steps.add(at, steps.remove(at + 1));
    }
    List<String> all = new ArrayList<>(before);
    steps.forEach(all::addAll);
    all.addAll(after);
    return String.join("\n", all) + "\n";
  }

  @Test
  void aFinishedBatchIsWhatTheRecipeSays() {
    for (String path : EXAMPLE.recipes()) {
      for (int kg : new int[] {1, 33, 500, 20000}) {
        BatchPlan plan = sized(path, kg + " kg finished");
        assertEquals(0, BigDecimal.valueOf(kg).compareTo(plan.balance().bagged().kg()), path);
      }
    }
  }

  @Test
  void bagsOfAFinishedBatchLeaveNothingOver() {
    BatchPlan plan = sized(GROWER, "1000 kg finished");
    assertEquals(40, plan.packing().orElseThrow().full());
    assertFalse(plan.packing().orElseThrow().hasRemainder());
  }

  /** What sticks to a bowl is as much for a large batch as for a small one. */
  @Test
  void overagePerWeighingOfAFinishedBatchIsAsOftenAsItsLoads() {
    for (int kg : new int[] {33, 500}) {
      BatchPlan plan = sized(GROWER, kg + " kg finished");
      Weighed vitamins =
          plan.mixLines().stream().filter(l -> l.name().equals("VIT-WW")).findFirst().orElseThrow();
      int loads = plan.scales().orElseThrow().loads();
      assertEquals(0.002 * loads, vitamins.handling().asDouble(), 1e-9, kg + " kg");
    }
  }

  @Test
  void withoutSizePackOrStore() {
    String[] lines = {"batch ", "pack ", "store "};
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER,
            ExamplePlans.CLEAN,
            text ->
                String.join(
                        "\n",
                        text.lines()
                            .filter(l -> Stream.of(lines).noneMatch(l.strip()::startsWith))
                            .toList())
                    .replace("2 g          per weighing", "1 %"));
    assertFalse(plan.sizeTold());
    assertTrue(plan.packing().isEmpty());
    assertTrue(plan.storing().isEmpty());
    closes(plan);
  }

  @Test
  void theRestMayBeInTheCoat() {
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER,
            ExamplePlans.CLEAN,
            text ->
                text.replace("wheat-middlings              rest  ", "wheat-middlings 21.18 %")
                    .replace("soybean-oil                  3.00 %", "soybean-oil rest"));
    closes(plan);
    Weighed oil =
        plan.coatLines().stream().filter(l -> l.name().equals("soybean-oil")).findFirst().get();
    assertEquals("1.800", oil.target().inKg());
  }

  @Test
  void stabilityOverageTakesFromTheRestToTheLastStep() {
    for (String rate : new String[] {"0.7 %", "33.3 %", "3.333333 %"}) {
      BatchPlan plan =
          EXAMPLE.plan(
              GROWER,
              ExamplePlans.CLEAN,
              text ->
                  text.replace(
                      "overage\n",
                      "overage\n  soybean-meal-48  "
                          + rate
                          + " for stability\n  salt  "
                          + rate
                          + " for stability\n"));
      closes(plan);
      Weighed rest =
          plan.weighing().stream()
              .filter(l -> l.name().equals("wheat-middlings"))
              .findFirst()
              .get();
      assertTrue(rest.stability().isNegative());
      Mass shares = Mass.sum(plan.weighing().stream().map(Weighed::target), 3);
      assertEquals("60.000", shares.at(3).inKg());
    }
  }

  @Test
  void aPremixWithinAPremixIsOrderedThroughIt() {
    ExamplePlans nested =
        EXAMPLE.with(
            "premixes/ALL-WW.premix",
            """
            premix ALL-WW "All in one"
              dose 20 g/kg

            mix
              VIT-WW 25 %
              MIN-WW 10 %
              wheat-middlings rest

            overage
              VIT-WW 2 % for handling

            process
              blend time 15 min
              pack bag 5 kg
            """);
    BatchPlan all = premix(nested, "ALL-WW");
    assertTrue(all.draft());
    assertEquals("10", all.balance().weighed().kg().stripTrailingZeros().toPlainString());
    closes(all);
    assertEquals(List.of("VIT-WW", "MIN-WW"), all.premixCodes());
    assertTrue(all.mixCautions().stream().anyMatch(one -> one.words().contains("Mask")));
    assertTrue(
        premix(nested, "VIT-WW").premixing().orElseThrow().needs().stream()
            .noneMatch(need -> need.code().equals("ALL-WW")),
        "a premix that nobody asks for asks for nothing");
  }

  @Test
  void aPremixIsMadeForOneBatchOfEachApprovedFeedInWholeBags() {
    BatchPlan vitamins = premix(EXAMPLE, "VIT-WW");
    Premixing premixing = vitamins.premixing().orElseThrow();
    double needed = premixing.needs().stream().mapToDouble(n -> n.kg().asDouble()).sum();
    double batch = vitamins.balance().weighed().asDouble();
    assertTrue(batch >= needed && batch < needed + 5, batch + " for " + needed);
    assertFalse(vitamins.packing().orElseThrow().hasRemainder());
    assertEquals(
        "0.30200",
        premixing.needs().stream()
            .filter(n -> n.code().equals("CG-36"))
            .findFirst()
            .get()
            .kg()
            .inKg());
    assertEquals(List.of(), vitamins.draftBecause());
    Premixing.Supplied c =
        premixing.supplied().stream()
            .filter(s -> s.title().contains("Vitamin C"))
            .findFirst()
            .get();
    assertEquals(120, c.asked(), 1e-9);
    assertEquals(120 / 0.005, c.designed(), 1e-6);
    assertEquals(1.25 * 120 / 0.005, c.fresh(), 1e-6);
    assertTrue(c.stored().getAsDouble() < c.fresh());
  }

  @Test
  void sharedOutWeightsComeToTheTotal() {
    Random random = new Random(20261125);
    for (int round = 0; round < 2000; round++) {
      int count = 1 + random.nextInt(30);
      List<Double> exact = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        exact.add(random.nextDouble() * 100);
      }
      int decimals = random.nextInt(5);
      double sum = exact.stream().mapToDouble(kg -> kg).sum();
      Mass total = Mass.of(sum, decimals);
      List<Mass> out = SharedOut.masses(exact, total);
      assertEquals(total, Mass.sum(out.stream(), decimals));
      double step = Mass.step(decimals).asDouble();
      for (int i = 0; i < count; i++) {
        assertEquals(exact.get(i), out.get(i).asDouble(), step * (1 + 1e-9));
      }
    }
  }

  private static BatchPlan premix(ExamplePlans example, String code) {
    return Optional.ofNullable(example.premixes().get(code)).orElseThrow();
  }

  private static BatchPlan sized(String path, String size) {
    return EXAMPLE.plan(
        path,
        ExamplePlans.CLEAN,
        text -> text.replaceAll("batch +\\S+ \\S+ \\S+", "batch " + size));
  }

  private static void closes(BatchPlan plan) {
    MassBalance balance = plan.balance();
    int decimals = balance.weighed().kg().scale();
    Function<Place, Mass> inFeed =
        place -> read(plan, place, Weighed::target).plus(read(plan, place, Weighed::stability));
    same(plan, balance.weighed(), inFeed.apply(Place.MIX).plus(inFeed.apply(Place.COAT)));
    same(plan, balance.mix(), inFeed.apply(Place.MIX));
    same(plan, balance.coat(), inFeed.apply(Place.COAT));
    Mass handling =
        read(plan, Place.MIX, Weighed::handling).plus(read(plan, Place.COAT, Weighed::handling));
    same(plan, balance.handling(), handling);
    Mass kernel =
        balance.mix().plus(balance.water()).plus(balance.steam()).minus(balance.evaporated());
    same(plan, balance.kernel(), kernel);
    same(plan, balance.finished(), kernel.plus(balance.coat()).minus(balance.evaporatedCoated()));
    same(plan, balance.bagged(), balance.finished().minus(balance.shrink()));
    assertFalse(balance.shrink().isNegative(), plan.code());
    Mass at = balance.mix();
    for (Task task : plan.tasks()) {
      same(plan, task.before(), at);
      at = task.before().plus(task.added()).minus(task.evaporated());
      same(plan, task.after(), at);
    }
    same(plan, balance.finished(), at);
    plan.packing()
        .ifPresent(
            packing -> {
              BigDecimal bags = packing.bag().kg().multiply(BigDecimal.valueOf(packing.full()));
              same(plan, balance.bagged(), new Mass(bags).plus(packing.remainder()));
              assertTrue(packing.remainder().kg().compareTo(packing.bag().kg()) < 0);
            });
    assertTrue(decimals <= 7, plan.code());
  }

  /** As one adds up what is printed: large lines, and the small ones of a place as one sum. */
  private static Mass read(BatchPlan plan, Place place, Function<Weighed, Mass> of) {
    int decimals = plan.balance().weighed().kg().scale();
    List<Weighed> lines = plan.weighing().stream().filter(l -> l.place() == place).toList();
    Mass large = Mass.sum(lines.stream().filter(l -> !l.micro()).map(of), decimals);
    Mass small = Mass.sum(lines.stream().filter(Weighed::micro).map(of), decimals);
    return large.plus(small.at(decimals));
  }

  private static void same(BatchPlan plan, Mass expected, Mass actual) {
    assertEquals(0, expected.kg().compareTo(actual.kg()), plan.code() + " " + expected + actual);
  }
}
