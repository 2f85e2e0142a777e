package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.LeastCostGoal;
import dev.pellucid.engine.goal.ShareOutGoal;
import dev.pellucid.engine.goal.ShareOutReport;
import dev.pellucid.engine.outcome.ShareOutSchema;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a person gets who asks to share out what is short. */
class ShareOutTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final String PLAN = "plans/trial.yaml";

  private static Texts example() throws IOException {
    return Texts.at(Example.whole()).held();
  }

  private static ShareOutReport shared(Map<String, String> files, String plan) throws IOException {
    return ShareOutGoal.of(example().over(files), DAY, plan, Map.of(), PrintedPaths.BELOW_FOLDER);
  }

  private static ShareOutReport plan(String yaml) throws IOException {
    return shared(Map.of(PLAN, yaml), "trial");
  }

  private static JsonNode json(ShareOutReport report) throws IOException {
    assertEquals(List.of(), report.problems());
    assertEquals(List.of(), ShareOutSchema.told(report.json()));
    return JsonMapper.shared().readTree(report.json());
  }

  @Test
  void whatIsShortIsSharedOutAndWhatMoreOfItIsWorthIsTold() throws IOException {
    ShareOutReport report = shared(Map.of(), "december");
    JsonNode json = json(report);
    assertEquals("all-made", json.get("standing").asString());
    JsonNode meal = json.get("short").get(0);
    assertTrue(meal.get("takenNow").asDouble() > meal.get("kg").asDouble());
    assertTrue(meal.get("takenThen").asDouble() <= meal.get("kg").asDouble());
    assertTrue(meal.get("worthPerKg").asDouble() > 0.1);
    assertTrue(meal.get("worthFrom").asDouble() <= 2000 && meal.get("worthTo").asDouble() > 2000);
    assertTrue(json.get("costOfPlenty").asDouble() < json.get("costThen").asDouble());
    assertEquals(3, report.changed().size());
    assertTrue(report.shown().contains("it is worth buying elsewhere"), report.shown());
    assertTrue(report.pages().html().contains("poultry-meal-60"));
    assertTrue(report.pages().markdown().contains("poultry-meal-60"));
  }

  @Test
  void theSchemaRefusesOtherKeys() throws IOException {
    String json = shared(Map.of(), "december").json();
    assertNotEquals(List.of(), ShareOutSchema.told(json.replace("\"standing\"", "\"stands\"")));
    assertNotEquals(List.of(), ShareOutSchema.told(json.replace("\"toBuy\"", "\"buy\"")));
  }

  @Test
  void whereNothingIsShortEachRecipeIsTheOneOfLeastCost() throws IOException {
    ShareOutReport report =
        plan(
            """
            feeds:
              - {recipe: CF-32, quantity: 6 t, by: 2026-12-10}
              - {recipe: CG-36, quantity: 2 t, by: 2026-12-10}
            available:
              poultry-meal-60: 500 t
            """);
    Map<String, String> alone = new TreeMap<>();
    for (String code : List.of("CF-32", "CG-36")) {
      alone.putAll(
          LeastCostGoal.of(example(), DAY, code, Map.of(), PrintedPaths.BELOW_FOLDER).changed());
    }
    assertEquals(2, alone.size());
    assertEquals(alone, report.changed());
    assertEquals(0, json(report).get("short").get(0).get("worthPerKg").asDouble());
  }

  @Test
  void whatPremixesTakeCountsAndWhatCannotBeMadeIsTold() throws IOException {
    ShareOutReport report =
        plan(
            """
            feeds:
              - {recipe: CF-32, quantity: 6 t, by: 2026-12-10}
            available:
              ascorbyl-phosphate-35: 1 kg
            """);
    JsonNode json = json(report);
    assertEquals("some-made", json.get("standing").asString());
    double made = json.get("feeds").get(0).get("made").asDouble();
    double lacks = json.get("lacks").get("ascorbyl-phosphate-35").asDouble();
    assertTrue(made > 0 && made < 6000, () -> "" + made);
    assertEquals(6000 / made, (1 + lacks), 0.02);
    assertTrue(report.shown().contains("of the 6 t of CF-32 by 2026-12-10"), report.shown());
  }

  @Test
  void ofPlannedBatchesEachIsMadeWholeOrNotAtAll() throws IOException {
    String size = "size: 6 t\n";
    Map<String, String> batches = new TreeMap<>();
    for (int day = 2; day < 9; day++) {
      batches.put("batches/TG-44-2026-12-0" + day + "-1.yaml", size);
    }
    JsonNode json = json(shared(batches, ""));
    assertEquals("some-made", json.get("standing").asString());
    JsonNode feed = json.get("feeds").get(0);
    assertEquals("weighed", feed.get("counted").asString());
    double made = 0;
    for (JsonNode due : feed.get("due")) {
      double kg = due.get("made").asDouble();
      assertTrue(kg == 0 || kg == due.get("wanted").asDouble(), () -> "" + due);
      made += kg;
    }
    assertEquals(made, feed.get("made").asDouble());
    assertTrue(made >= 6000, feed::toString);
    for (JsonNode one : json.get("short")) {
      assertTrue(one.get("takenThen").asDouble() <= one.get("kg").asDouble() * (1 + 1e-9));
    }
    JsonNode last = feed.get("due").get(feed.get("due").size() - 1);
    assertEquals(0, last.get("made").asDouble(), "what is made last is left out first");
  }

  @Test
  void whatNoFeedTakesIsNoted() throws IOException {
    ShareOutReport report =
        plan(
            """
            feeds:
              - {recipe: CG-36, quantity: 2 t, by: 2026-12-10}
            available:
              krill-meal: 1 t
            """);
    assertTrue(
        report.shown().replaceAll("\\s+", " ").contains("no feed of the plan takes krill-meal"),
        report.shown());
    assertEquals(0, json(report).get("short").size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          CG-37  | 2 t    | 2026-12-10 | maize: 1 t       | CG-37 is not a recipe of this folder
          CG-36  | 2 t    | 2026-11-10 | maize: 1 t       | is past on 2026-11-28
          CG-36  | 2 km   | 2026-12-10 | maize: 1 t       | plans/trial.yaml:2:
          CG-36  | 2 t    | 2026-12-32 | maize: 1 t       | plans/trial.yaml:2:
          CG-36  | 2 t    | 2026-12-10 | VIT-WW: 1 t      | VIT-WW is no ingredient that can be short
          CG-36  | 2 t    | 2026-12-10 | maise: 1 t       | did you mean maize?
          CG-36  | 2 t    | 2026-12-10 | maize: plenty    | plans/trial.yaml:4:
          CG-36  | 0 t    | 2026-12-10 | maize: 1 t       | plans/trial.yaml:2:
          """)
  void eachSlipIsOneSentenceAtItsPlace(
      String code, String quantity, String by, String available, String told) throws IOException {
    ShareOutReport report =
        plan(
            "feeds:\n  - {recipe: %s, quantity: %s, by: %s}\navailable:\n  %s\n"
                .formatted(code, quantity, by, available));
    assertEquals(1, report.problems().size(), () -> "" + report.problems());
    String problem = report.problems().get(0);
    assertTrue(problem.startsWith(PLAN + ":"), problem);
    assertTrue(problem.contains(told), problem);
    assertTrue(report.changed().isEmpty());
  }

  @Test
  void aDraftAndAQuantityThatIsFarOffAreNoted() throws IOException {
    ShareOutReport report = plan("feeds:\n  - {recipe: CG-36I, quantity: 20 t, by: 2026-12-10}\n");
    String notes = "" + json(report).get("notes");
    assertTrue(notes.contains("CG-36I is planned, and is still a draft"), notes);
    assertTrue(notes.contains("20 t of CG-36I are planned, and 500 kg are made in a month"), notes);
  }

  @Test
  void aPlanThatIsNotThereIsToldWithTheNearest() throws IOException {
    List<String> problems = shared(Map.of(), "decembr").problems();
    assertEquals(List.of("decembr is no plan of this folder; did you mean december?"), problems);
  }

  @ParameterizedTest
  @CsvSource({"plans/december.yaml", "december.yaml", "December"})
  void aPlanIsMeantThatIsCalledByItsFile(String called) throws IOException {
    List<String> problems = shared(Map.of(), called).problems();
    assertEquals(List.of(called + " is no plan of this folder; did you mean december?"), problems);
  }

  @Test
  void aFileOfAPlanThatIsEmptyIsToldAtItsPlace() throws IOException {
    List<String> problems = plan("# Nothing yet.\n").problems();
    assertEquals(1, problems.size(), () -> "" + problems);
    assertTrue(problems.get(0).startsWith(PLAN + ":1:1: "), () -> "" + problems);
  }

  @Test
  void aDecimalCommaBetweenBracesIsToldAsOne() throws IOException {
    List<String> problems =
        plan("feeds:\n  - {recipe: CG-36, quantity: 1,5 t, by: 2026-12-10}\n").problems();
    assertTrue(
        problems.get(1).endsWith("a comma parts entries: write the decimals behind a point"),
        () -> "" + problems);
  }

  @ParameterizedTest
  @CsvSource({"none", "0 kg"})
  void whatIsNotThereAtAllStopsTheFeedThatNeedsIt(String none) throws IOException {
    String wanted = "feeds:\n  - {recipe: CF-32, quantity: 2 t, by: 2026-12-10}\navailable:\n";
    JsonNode stopped = json(plan(wanted + "  ascorbyl-phosphate-35: " + none + "\n"));
    assertEquals("some-made", stopped.get("standing").asString());
    assertEquals(0, stopped.get("feeds").get(0).get("made").asDouble());
  }

  @Test
  void withoutAPlanAndBatchesItIsSaidWhatToWrite() throws IOException {
    Texts none =
        example().over(Map.of("batches/TG-44-2026-12-01-1.yaml", "size: 1 t\nclosed: yes\n"));
    ShareOutReport report = ShareOutGoal.of(none, DAY, "", Map.of(), PrintedPaths.BELOW_FOLDER);
    assertFalse(report.problems().isEmpty());
    assertTrue(report.problems().get(0).contains("name a plan with -Dpellucid.plan=december"));
  }
}
