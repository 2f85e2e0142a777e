package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.ShareOutGoal;
import dev.pellucid.engine.goal.ShareOutReport;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.SheetsGoal;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.engine.outcome.ShareOutSchema;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the store gives to those who share: re-balanced batches first, premixes that are there. */
class ShareOutStoreTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final String REBALANCED = "batches/CF-31-2026-12-02-1.yaml";
  private static final String SHARES =
      """
      size: 500 kg
      weighed:
        - {line: soybean-meal-48, lot: SB-0411}
      rebalanced:
        by: quality manager
        day: 2026-11-27
        shares:
          - {line: soybean-meal-48, share: 28.50 %}
      """;
  private static final String MINERALS = "batches/MIN-WW-2026-11-12-1.yaml";

  /** kg of the premix that are left: what was weighed, less a sample and what a batch took. */
  private static final double LEFT = 4.9997 - 0.1 - 0.21;

  private static Texts over(Map<String, String> files) throws IOException {
    return Texts.at(Example.whole()).held().over(files);
  }

  private static ShareOutReport shared(Map<String, String> files, String plan) throws IOException {
    return ShareOutGoal.of(over(files), DAY, plan, Map.of(), PrintedPaths.BELOW_FOLDER);
  }

  private static ShareOutReport plan(String available, Map<String, String> others)
      throws IOException {
    Map<String, String> files = new TreeMap<>(others);
    files.put(
        "plans/trial.yaml",
        "feeds:\n  - {recipe: CF-32, quantity: 6 t, by: 2026-12-10}\navailable:\n  "
            + available
            + "\n");
    return shared(files, "trial");
  }

  private static JsonNode json(ShareOutReport report) throws IOException {
    assertEquals(List.of(), report.problems());
    assertEquals(List.of(), ShareOutSchema.told(report.json()));
    return JsonMapper.shared().readTree(report.json());
  }

  private static JsonNode of(JsonNode list, String key, String name) {
    for (JsonNode one : list) {
      if (one.get(key).asString().equals(name)) {
        return one;
      }
    }
    throw new AssertionError(name + " in " + list);
  }

  @Test
  void aRebalancedBatchTakesFirstAndKeepsItsSharesAndItsRecipe() throws IOException {
    Map<String, String> files = new TreeMap<>();
    files.put(REBALANCED, SHARES);
    files.put("batches/CF-31-2026-12-04-1.yaml", "size: 500 kg\n");
    ShareOutReport report = shared(files, "");
    JsonNode json = json(report);
    JsonNode batch = json.get("asRecorded").get(0);
    assertEquals("CF-31-2026-12-02-1", batch.get("batch").asString());
    assertEquals(500, batch.get("kg").asDouble());
    assertEquals(142.5, batch.get("takes").get("soybean-meal-48").asDouble(), 1e-9);
    assertEquals(2, json.get("feeds").size());
    assertEquals(500, of(json.get("feeds"), "code", "CF-31").get("wanted").asDouble());
    assertFalse(report.changed().keySet().toString().contains("CF-31"), report.shown());
    assertTrue(report.shown().contains("CF-31-2026-12-02-1 is re-balanced"), report.shown());
    files.put(REBALANCED, "size: 500 kg\nclosed: yes\n");
    JsonNode without = json(shared(files, ""));
    assertEquals(0, without.get("asRecorded").size());
    assertEquals(
        142.5,
        of(without.get("short"), "ingredient", "soybean-meal-48").get("kg").asDouble()
            - of(json.get("short"), "ingredient", "soybean-meal-48").get("kg").asDouble(),
        1e-9);
  }

  @Test
  void whatTheStoreLacksForARebalancedBatchIsSaid() throws IOException {
    ShareOutReport report = shared(Map.of(REBALANCED, SHARES.replace("500 kg", "17 t")), "");
    String notes = "" + json(report).get("notes");
    assertTrue(notes.contains("the store lacks"), notes);
    assertTrue(notes.contains("kg of wheat-middlings"), notes);
    assertFalse(notes.contains("rice-bran"), "the folder keeps no lots of it: " + notes);
  }

  @Test
  void aRebalancedRecordWithAnErrorIsToldAtItsPlace() throws IOException {
    ShareOutReport report = shared(Map.of(REBALANCED, SHARES.replace("28.50 %", "48.50 %")), "");
    assertEquals(1, report.problems().size(), () -> "" + report.problems());
    String problem = report.problems().get(0);
    assertTrue(problem.startsWith(REBALANCED + ":8:"), problem);
  }

  @Test
  void whereEveryPlannedBatchIsRebalancedThereIsNothingToShareOut() throws IOException {
    String closed = "size: 1 t\nclosed: yes\n";
    List<String> problems =
        shared(Map.of(REBALANCED, SHARES, "batches/TG-44-2026-12-01-1.yaml", closed), "")
            .problems();
    assertEquals(1, problems.size());
    assertTrue(problems.get(0).contains("CF-31-2026-12-02-1"), () -> "" + problems);
  }

  @Test
  void aPremixThatIsThereSparesWhatItIsMadeOf() throws IOException {
    JsonNode json = json(plan("selenite-1: 1 kg", Map.of()));
    JsonNode selenite = json.get("short").get(0);
    double perKg = 12.5 / 5000;
    assertEquals(LEFT * perKg, selenite.get("inPremixes").asDouble(), 1e-6);
    double needed = selenite.get("takenThen").asDouble();
    double lacks = of(json.get("premixesToMake"), "premix", "MIN-WW").get("kg").asDouble();
    assertEquals(needed / perKg, lacks + LEFT, 0.01);
    assertEquals(
        lacks * perKg,
        of(json.get("toBuy"), "ingredient", "selenite-1").get("needed").asDouble(),
        1e-6);
    double spared = selenite.get("inPremixes").asDouble();
    JsonNode all = json(plan("selenite-1: %.4f g".formatted((needed - spared) * 1010), Map.of()));
    assertEquals("all-made", all.get("standing").asString());
    JsonNode some = json(plan("selenite-1: %.4f g".formatted((needed - spared) * 500), Map.of()));
    assertEquals("some-made", some.get("standing").asString());
    assertEquals(
        (needed - spared) / 2, some.get("lacks").get("selenite-1").asDouble(), 1e-3 * needed);
  }

  @Test
  void aPremixThatIsNotReleasedSparesNothing() throws IOException {
    String record =
        Texts.at(Example.whole()).held().read(MINERALS, new ArrayList<>()).orElseThrow().text();
    String rejected = record.replace("decision: released", "decision: rejected");
    assertFalse(rejected.equals(record));
    JsonNode json = json(plan("selenite-1: 1 kg", Map.of(MINERALS, rejected)));
    assertEquals(0, json.get("short").get(0).get("inPremixes").asDouble());
  }

  @Test
  void whatIsToBeBoughtIsThePurchaseListOfTheFolderOnceTheChangesStand() throws IOException {
    Map<String, String> files = new TreeMap<>();
    files.put(REBALANCED, SHARES);
    files.put("batches/CF-32-2026-12-03-1.yaml", "size: 4 t\n");
    files.put("batches/CG-36-2026-12-04-1.yaml", "size: 2 t\n");
    ShareOutReport report = shared(files, "");
    assertEquals("all-made", json(report).get("standing").asString());
    assertFalse(report.changed().isEmpty());
    files.putAll(report.changed());
    SheetReport sheets = new SheetsGoal(over(files), DAY, Version.UNKNOWN).run();
    String list = sheets.purchases().orElseThrow().text();
    String toOrder = list.substring(list.indexOf("To order"), list.indexOf("\n\nNeeded is"));
    String needed = toOrder.substring(toOrder.indexOf("What is needed"));
    assertTrue(report.shown().contains(needed), report.shown() + "\n\n" + list);
    String orders = toOrder.substring(0, toOrder.indexOf("\n\nPremixes to make"));
    assertTrue(report.shown().contains(orders), report.shown() + "\n\n" + list);
  }

  @Test
  void packsAndWhatComesTooLateAreTold() throws IOException {
    ShareOutReport report =
        shared(
            Map.of(
                "plans/trial.yaml", "feeds:\n  - {recipe: TF-40, quantity: 8 t, by: 2026-11-30}\n"),
            "trial");
    JsonNode json = json(report);
    JsonNode oil = of(json.get("toBuy"), "ingredient", "rapeseed-oil");
    assertEquals(190, oil.get("pack").asDouble());
    assertEquals(Math.ceil(oil.get("kg").asDouble() / 190), oil.get("packs").asDouble(), "" + oil);
    assertEquals(190 * oil.get("packs").asDouble(), oil.get("ordered").asDouble());
    assertTrue(oil.get("late").asBoolean());
    assertTrue(report.shown().contains("Too late: Rapeseed oil was to be ordered by"));
    int inTime = 0;
    for (JsonNode one : json.get("toBuy")) {
      boolean late =
          !one.get("orderBy").isNull() && one.get("orderBy").asString().compareTo("" + DAY) < 0;
      assertEquals(late, one.get("late").asBoolean(), "" + one);
      inTime += late ? 0 : 1;
    }
    assertTrue(inTime > 0);
  }
}
