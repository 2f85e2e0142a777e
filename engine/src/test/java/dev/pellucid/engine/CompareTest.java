package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a change of the example folder does to its feeds. */
class CompareTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String GROWER = "catfish/CG-36.recipe";

  @TempDir Path copy;
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
  }

  @Test
  void nothingChangedIsNoChange() throws IOException {
    assertEquals(List.of(), codes());
    assertEquals("no finding is new and none is gone; no feed changes\n", compared().text());
  }

  @Test
  void layoutAloneIsNoChange() throws IOException {
    folder.with(GROWER, "  maize                        14.00 %", "\n  maize 14.00 %");
    assertEquals(List.of(), codes());
  }

  @Test
  void aShareMovesItsFeedAlone() throws IOException {
    folder.with(
        GROWER, "soybean-meal-48              44.00 %", "soybean-meal-48              40.00 %");
    Approvals.verify(compared().text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"txt", "md", "html", "json"})
  void aMixedChangeIsToldInEachForm(String form) throws IOException {
    folder.with(GROWER, "soybean-meal-48              44.00 %", "soybean-meal-48  36.00 %");
    folder.with(GROWER, "crude-protein                35.5 %", "crude-protein  38.5 %");
    folder.with("prices/2026-11.yaml", "squid-meal: ", "squid-meal: 1");
    Files.move(copy.resolve("carp/KF-29.recipe"), copy.resolve("carp/KF-30.recipe"));
    folder.with("carp/KF-30.recipe", "recipe KF-29", "recipe KF-30");
    folder.with("trout/TS-48.recipe", "  fish-meal-65 ", "  fish-meal-56 ");
    CompareReport report = compared();
    String told =
        switch (form) {
          case "txt" -> report.text();
          case "md" -> report.markdown();
          case "html" -> Inlined.byName(report.html());
          default -> report.json();
        };
    Approvals.verify(
        told, Approvals.NAMES.withParameters(form).forFile().withExtension("." + form));
  }

  @Test
  void anAnalysisMovesEveryFeedThatHoldsIt() throws IOException {
    folder.with("ingredients/maize.yaml", "crude-protein: 8.75", "crude-protein: 7.75");
    CompareReport report = compared();
    assertTrue(
        report.comparison().changes().stream()
            .allMatch(one -> one.how() == RecipeChange.How.BY_DATA),
        report.text());
    for (RecipeChange change : report.comparison().changes()) {
      String recipe = recipe(change.code());
      assertTrue(recipe.contains("  maize ") || recipe.contains("-TR "), change.code());
      assertEquals(List.of("ingredients/maize.yaml"), files(change));
    }
    long holding = codesHolding("  maize ");
    assertTrue(report.comparison().changes().size() >= holding, report.text());
  }

  @Test
  void aPriceMovesTheCostAndNothingElse() throws IOException {
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.25");
    for (RecipeChange change : compared().comparison().changes()) {
      assertEquals(List.of(), change.effect().orElseThrow().moved());
      assertTrue(change.costMoved() > 0, change.code());
      assertEquals(List.of("prices/2026-11.yaml"), files(change));
    }
    assertTrue(codes().contains("CG-36"));
  }

  @Test
  void aPremixTwoLevelsDownReachesTheFeed() throws IOException {
    folder.with(
        "premixes/VIT-WW.premix", "vitamin-e                    160 mg/kg", "vitamin-e 150 mg/kg");
    assertTrue(codes().contains("CG-36"), compared().text());
    assertTrue(!codes().contains("TG-44"), "trout takes another premix");
  }

  @Test
  void anIngredientOfAPremixIsNamed() throws IOException {
    folder.with("ingredients/riboflavin-80.yaml", "riboflavin: 80", "riboflavin: 81");
    for (RecipeChange change : compared().comparison().changes()) {
      assertEquals(List.of("ingredients/riboflavin-80.yaml"), files(change));
    }
    assertTrue(codes().contains("CG-36"));
  }

  @Test
  void aLimitThatIsRaisedIsNewlyBrokenAndComesFirst() throws IOException {
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.25");
    folder.with(GROWER, "min 34 %     in 95 % of batches", "min 37 %     in 95 % of batches");
    CompareReport report = compared();
    assertEquals("CG-36", report.comparison().changes().get(0).code());
    assertTrue(
        report.text().contains("BROKEN crude-protein min 37 % in 95 % of batches"), report.text());
    assertTrue(report.tally().startsWith("1 error is new; "), report.tally());
    assertTrue(report.tally().endsWith(", 1 limit is newly broken"), report.tally());
  }

  @Test
  void aRecipeThatIsRenamedOrBrokenIsSaid() throws IOException {
    Files.move(copy.resolve(GROWER), copy.resolve("catfish/CG-99.recipe"));
    folder.with("catfish/CG-99.recipe", "recipe CG-36 ", "recipe CG-99 ");
    folder.with("catfish/CF-31.recipe", "  maize ", "  maise ");
    String text = compared().text();
    assertTrue(text.contains("computed\nCF-31  cannot be computed any more\n"), text);
    assertTrue(text.contains("CG-99, formerly CG-36  renamed\n  code CG-36 -> CG-99\n"), text);
    assertTrue(text.contains("label to print again: code and name\n"), text);
  }

  @Test
  void wordsOfTheBagThatChangeAreALabelToPrintAnew() throws IOException {
    folder.with("ingredients/fish-meal-65.yaml", "label-name: Fish meal", "label-name: Fishmeal");
    assertTrue(
        compared().text().contains("label to print again: Composition\n"), compared().text());
    folder.with("ingredients/fish-meal-65.yaml", "label-name: Fishmeal", "label-name: Fish meal");
    folder.with("label/eu-767-2009.yaml", "Contains fishmeal -", "Contains fish meal -");
    assertTrue(compared().text().contains("label to print again: Cautions\n"), compared().text());
    folder.with("label/eu-767-2009.yaml", "Contains fish meal -", "Contains fishmeal -");
    folder.with("ingredients/soybean-meal-48.yaml", "modified: yes", "modified: no");
    assertTrue(
        compared().text().contains("label to print again: Composition\n"), compared().text());
    folder.with("ingredients/soybean-meal-48.yaml", "modified: no", "modified: yes");
    folder.with("pellucid.yaml", "3 Weir Lane", "4 Weir Lane");
    assertTrue(
        compared()
            .text()
            .contains("label to print again: Address 3 Weir Lane, Sallowmere -> 4 Weir"),
        compared().text());
  }

  @Test
  void theReviewOfAHundredRecipesIsShortAndShowsTheWorstFirst() throws IOException {
    String grower = recipe("CG-36");
    for (int i = 100; i < 200; i++) {
      Files.writeString(
          copy.resolve("catfish/ZZ-" + i + ".recipe"), grower.replace("CG-36", "ZZ-" + i));
    }
    Path before = Files.createDirectories(copy.resolveSibling(copy.getFileName() + "-before"));
    SlippedFolder first = SlippedFolder.withRecords(before);
    for (int i = 100; i < 200; i++) {
      Files.writeString(
          before.resolve("catfish/ZZ-" + i + ".recipe"), grower.replace("CG-36", "ZZ-" + i));
    }
    assertTrue(first.codes().isEmpty(), first.text());
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.25");
    folder.with("ingredients/maize.yaml", "crude-protein: 8.75", "crude-protein: 7.75");
    folder.with(
        "catfish/ZZ-150.recipe",
        "min 34 %     in 95 % of batches",
        "min 39 %     in 95 % of batches");
    CompareReport report =
        Pellucid.compare(FolderState.at(before), FolderState.at(copy), DAY, "compare.html");
    assertTrue(report.comparison().changes().size() >= 100);
    assertTrue(report.markdown().length() < 60_000, report.markdown().length() + " characters");
    int worst = report.markdown().indexOf("### ZZ-150");
    assertEquals(worst, report.markdown().indexOf("###"));
  }

  @Test
  void aLimitThatIsLoosenedIsSaidOfAllThatItHolds() throws IOException {
    folder.with("limits/catfish-grower.limits", "min 29 %", "min 28 %");
    String text = compared().text();
    assertTrue(
        text.contains(
            """
            CG-36  not touched, changed by its data
              limit digestible-protein min 29 % -> min 28 % (catfish-grower)
            """),
        text);
    assertTrue(text.contains("because of limits/catfish-grower.limits\n"), text);
    assertTrue(!codes().contains("TG-44"), text);
  }

  @Test
  void aScaleOfThePlantMovesTheWeighSheetAlone() throws IOException {
    folder.with("plant/river-mill.yaml", "division: 200 g", "division: 100 g");
    CompareReport report = compared();
    RecipeChange change = report.comparison().changes().get(0);
    assertEquals(List.of("plant/river-mill.yaml"), files(change));
    assertEquals(List.of(), change.effect().orElseThrow().moved());
    assertTrue(report.text().contains("  weigh sheet, each load or round: "), report.text());
  }

  @Test
  void aFileThatMakesNoDifferenceIsNotNamed() throws IOException {
    folder.with("ingredients/maize.yaml", "crude-protein: 8.75", "crude-protein: 7.75");
    folder.with("practice/bounds.yaml", "from: 50 °C, to: 85", "from: 50 °C, to: 84");
    folder.with("prices/2026-11.yaml", "squid-meal: 2.30", "squid-meal: 2.31");
    for (RecipeChange change : compared().comparison().changes()) {
      List<String> files = files(change);
      assertTrue(!files.contains("practice/bounds.yaml"), files.toString());
      boolean shrimp = change.code().startsWith("S");
      assertEquals(shrimp, files.contains("prices/2026-11.yaml"), change.code() + files);
    }
  }

  @Test
  void whatIsWorkedInAgainMovesTheFeedThatTakesIt() throws IOException {
    String salt = "  salt                         0.30 %\n";
    Path before = Files.createDirectories(copy.resolveSibling(copy.getFileName() + "-rework"));
    SlippedFolder first = SlippedFolder.withRecords(before);
    first.with(GROWER, salt, salt + "  rework CF-31  3.00 %\n");
    folder.with(GROWER, salt, salt + "  rework CF-31  3.00 %\n");
    folder.with("catfish/CF-31.recipe", "  salt                         0.30 %", "  salt  0.40 %");
    CompareReport report =
        Pellucid.compare(FolderState.at(before), FolderState.at(copy), DAY, "compare.html");
    RecipeChange taker =
        report.comparison().changes().stream()
            .filter(change -> change.code().equals("CG-36"))
            .findFirst()
            .orElseThrow();
    assertEquals(RecipeChange.How.BY_DATA, taker.how());
    assertEquals(List.of("catfish/CF-31.recipe"), files(taker));
  }

  @Test
  void aWaiverLetsANutrientMoveFurther() throws IOException {
    folder.with(
        GROWER, "soybean-meal-48              44.00 %", "soybean-meal-48              36.00 %");
    assertTrue(beyond().contains("CG-36: crude-protein falls by 7.23 %, allowed is 5 %"), beyond());
    folder.with(
        GROWER,
        "process\n",
        "waivers\n  crude-protein  min 30 %  until 2027-03-31  by \"quality manager\"  because"
            + " \"less soya\"\n\nprocess\n");
    assertTrue(compared().text().contains("  waiver new: crude-protein min 30 % until 2027-03-31"));
    assertTrue(!beyond().contains("crude-protein"), beyond());
    assertTrue(beyond().contains("CG-36: lysine falls by 8.448 %"), beyond());
  }

  private String beyond() throws IOException {
    return String.join("; ", compared().beyond(OptionalDouble.of(5), OptionalDouble.of(5)));
  }

  @Test
  void aRecipeThatIsNewOrGoneIsSaid() throws IOException {
    Files.delete(copy.resolve("trout/TS-48.recipe"));
    Files.writeString(
        copy.resolve("ZZ-1.recipe"),
        "recipe ZZ-1\n  species african-catfish\nmix\n  maize  100 %\nlimits\n  starch  min 1 %\n");
    String text = compared().text();
    assertTrue(text.contains("TS-48  gone\n"), text);
    assertTrue(text.contains("ZZ-1  new\n  new warning maize is at 100.0 %, the cap "), text);
    assertTrue(text.contains("\n  limits: "), text);
    assertTrue(text.contains("\n  cost 0.2"), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"txt", "md", "html", "json"})
  void aNewRecipeIsJudgedInEachForm(String form) throws IOException {
    Path grower = copy.resolve(GROWER);
    String text = Files.readString(grower).replace("recipe CG-36 ", "recipe CX-1 ");
    Files.writeString(
        copy.resolve("catfish/CX-1.recipe"),
        text.replace(
            "soybean-meal-48              44.00 %", "soybean-meal-48              34.00 %"));
    CompareReport report = compared();
    String told =
        switch (form) {
          case "txt" -> report.text();
          case "md" -> report.markdown();
          case "html" -> Inlined.byName(report.html());
          default -> report.json();
        };
    Approvals.verify(
        told, Approvals.NAMES.withParameters(form).forFile().withExtension("." + form));
    assertTrue(beyond().contains("CX-1 is new and does not keep crude-protein min "), beyond());
    assertEquals(List.of(), report.beyond(OptionalDouble.empty(), OptionalDouble.empty()));
  }

  @Test
  void aNewRecipeThatCannotBeComputedIsCountedAndPassesNoGate() throws IOException {
    Files.writeString(copy.resolve("ZZ-1.recipe"), "recipe ZZ-1\nmix\n  maise  100 %\n");
    CompareReport report = compared();
    assertEquals("1 error is new; 1 feed changes, 1 feed cannot be computed", report.tally());
    assertTrue(beyond().startsWith("ZZ-1 is new and cannot be computed: maise is "), beyond());
  }

  @Test
  void filesAreCalledForScriptsAsTheyAreAsked() throws IOException {
    folder.with("prices/2026-11.yaml", "squid-meal: ", "squid-meal: 1");
    String json =
        Pellucid.compare(
                FolderState.at(EXAMPLE),
                FolderState.at(copy),
                new PrintedPaths("mill/feeds/"),
                DAY,
                "compare.html")
            .json();
    assertTrue(json.contains("\"file\": \"mill/feeds/prices/2026-11.yaml\""), json);
  }

  @Test
  void everyChangeHasTheSameKeysInJson() throws IOException {
    Files.delete(copy.resolve("trout/TS-48.recipe"));
    Files.writeString(
        copy.resolve("ZZ-1.recipe"),
        "recipe ZZ-1\nmix\n  maize  100 %\nlimits\n  starch  min 1 %\n");
    Files.writeString(copy.resolve("ZZ-2.recipe"), "recipe ZZ-2\nmix\n  maise  100 %\n");
    folder.with("catfish/CF-31.recipe", "  maize ", "  maise ");
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.25");
    tools.jackson.databind.JsonNode changes =
        new tools.jackson.databind.ObjectMapper().readTree(compared().json()).get("changes");
    assertTrue(changes.size() > 5);
    java.util.Set<List<String>> keys = new java.util.HashSet<>();
    changes.forEach(change -> keys.add(List.copyOf(change.propertyNames())));
    assertEquals(1, keys.size(), keys.toString());
  }

  private static List<String> files(RecipeChange change) {
    return change.because().stream().map(RecipeChange.Cause::path).toList();
  }

  @Test
  void ofManyChangedFilesItIsToldThatNoneWasTried() throws IOException {
    String maize = Files.readString(copy.resolve("ingredients/maize.yaml"));
    for (int i = 0; i < 101; i++) {
      Files.writeString(copy.resolve("ingredients/other-" + i + ".yaml"), maize);
    }
    folder.with(
        GROWER, "soybean-meal-48              44.00 %", "soybean-meal-48              40.00 %");
    String note = "; 102 files changed, of which none was taken back to see what it did: ";
    CompareReport report = compared();
    assertTrue(report.text().contains(note), report.text());
    assertTrue(report.markdown().contains(note), report.markdown());
    assertTrue(report.html().contains(note));
  }

  private CompareReport compared() throws IOException {
    return Pellucid.compare(FolderState.at(EXAMPLE), FolderState.at(copy), DAY, "compare.html");
  }

  private List<String> codes() throws IOException {
    return compared().comparison().changes().stream().map(RecipeChange::code).toList();
  }

  private String recipe(String code) throws IOException {
    try (var files = Files.walk(copy)) {
      Path path = files.filter(file -> file.endsWith(code + ".recipe")).findFirst().orElseThrow();
      return Files.readString(path);
    }
  }

  private long codesHolding(String words) throws IOException {
    try (var files = Files.walk(copy)) {
      long count = 0;
      for (Path path : files.filter(file -> file.toString().endsWith(".recipe")).toList()) {
        count += Files.readString(path).contains(words) ? 1 : 0;
      }
      return count;
    }
  }
}
