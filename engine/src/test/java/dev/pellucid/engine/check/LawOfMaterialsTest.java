package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Maxima of raw materials, values of guidance, bans with their articles, and acts that end. */
class LawOfMaterialsTest {
  private static final String LOTS = "lots/2026-11.yaml";
  private static final String MEAL = "ingredients/fish-meal-65.yaml";
  private static final String MERCURY = "crude-ash: 16.8 %\n        mercury: ";

  @TempDir Path copy = Path.of("");

  private static List<Finding> of(SlippedFolder folder, String code) throws IOException {
    return folder.findings().stream().filter(one -> one.code().text().equals(code)).toList();
  }

  /** 0.52 as fed of 8.6 % moisture is 0.5006 at 12 %, and 0.519 is 0.4997. */
  @ParameterizedTest
  @CsvSource({"0.52 mg/kg, 3", "0.519 mg/kg, 0", "below 0.9 mg/kg, 0"})
  void aLotIsHeldToTheMaximumOfItsMaterialByItsAnalysis(String told, int errors)
      throws IOException {
    SlippedFolder folder = SlippedFolder.withRecords(copy);
    folder.with(LOTS, "crude-ash: 16.8 %", MERCURY + told);
    List<Finding> found = of(folder, "lot-above-maximum");
    assertEquals(errors, found.size(), folder.text());
    for (Finding one : found) {
      assertEquals(Severity.ERROR, one.severity());
    }
    if (errors > 0) {
      assertTrue(found.toString().contains("FM-26-1187"), folder.text());
      assertFalse(folder.codes().contains("lot-unlike-library"), folder.text());
    }
  }

  @Test
  void oneThatFailedItsInspectionIsSetApartAlready() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    Files.createDirectories(copy.resolve("lots"));
    Files.writeString(
        copy.resolve(LOTS),
        Files.readString(Path.of("..", "recipes", "lots", "2026-11.yaml"))
            .replaceFirst("inspection: passed", "inspection: failed")
            .replace("crude-ash: 16.8 %", MERCURY + "0.7 mg/kg"));
    assertEquals(List.of(), of(folder, "lot-above-maximum"), folder.text());
  }

  @Test
  void noSheetTakesOfSuchALot() throws IOException {
    SlippedFolder.withRecords(copy).with(LOTS, "crude-ash: 16.8 %", MERCURY + "0.7 mg/kg");
    String before = sheets(Example.whole());
    assertTrue(before.contains("FM-26-1187"), before);
    String after = sheets(copy);
    assertFalse(after.contains("FM-26-1187"), after);
    assertTrue(after.contains("FM-26-1203"), after);
  }

  private static String sheets(Path root) throws IOException {
    SheetReport report = OwnFolder.batchSheets(root, LocalDate.of(2026, 11, 25), Version.UNKNOWN);
    StringBuilder all = new StringBuilder();
    report.sheets().forEach(sheet -> all.append(sheet.text()));
    return all.toString();
  }

  /** Krill meal is bounded by its own row and not by that of its group. */
  @ParameterizedTest
  @CsvSource({
    "krill-meal, fluorine: 1500, fluorine: 2900, 0",
    "krill-meal, fluorine: 1500, fluorine: 3300, 1",
    "rapeseed-meal, mustard-oil: 300, mustard-oil: 3900, 0",
    "cassava-meal, hydrocyanic-acid: 60, hydrocyanic-acid: 110, 1",
    "fish-meal-65, mercury: 0.10, mercury: 0.49, 0",
    "fish-meal-65, dl-pcb: 0.0008, dl-pcb: 0.0039, 1",
    "maize, deoxynivalenol: 0.5, deoxynivalenol: 8.5, 1",
  })
  void anIngredientOverItsMaximumIsLookedAt(String name, String from, String to, int warnings)
      throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    folder.with("ingredients/" + name + ".yaml", from, to);
    List<Finding> found = of(folder, "material-above-maximum");
    assertEquals(warnings, found.size(), folder.text());
    for (Finding one : found) {
      assertEquals(Severity.WARNING, one.severity());
    }
  }

  @Test
  void whatIsUnusualTooIsToldOnce() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(MEAL, "mercury: 0.10", "mercury: 1.0");
    assertFalse(folder.codes().contains("data-unusual"), folder.text());
    assertTrue(folder.text().contains("note: fish-meals usually hold 0.015"), folder.text());
  }

  @Test
  void lawOfMaterialsElsewhereBindsNothing() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(MEAL, "mercury: 0.10", "mercury: 0.6")
            .with(
                "law/materials/eu-materials-marine.limits", "jurisdiction  EU", "jurisdiction  US");
    assertEquals(List.of(), of(folder, "material-above-maximum"), folder.text());
  }

  @Test
  void noFeedMeetsThem() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                "catfish/CG-36.recipe",
                "  meets     house-practice\n",
                "  meets     house-practice\n  meets     eu-materials-marine\n");
    assertTrue(folder.text().contains("bounds raw materials, and no feed meets it"), folder.text());
  }

  @Test
  void aValueOfGuidanceThatIsPassedIsAWarning() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with("guidance/eu-mycotoxins.limits", "max 10 mg/kg", "max 1.0 mg/kg")
            .with("ingredients/maize.yaml", "fumonisins: 1.0", "fumonisins: 10");
    List<Finding> found = of(folder, "above-maximum");
    assertFalse(found.isEmpty(), folder.text());
    for (Finding one : found) {
      assertEquals(Severity.WARNING, one.severity(), folder.text());
      assertTrue(one.headline().contains("the guidance maximum (EU) is 1.0 mg/kg"));
    }
    assertFalse(folder.text().contains("law cannot be waived"), folder.text());
  }

  @Test
  void lawThatIsWrittenAsGuidanceIsTold() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with("law/eu-other-fish.limits", "  kind      law", "  kind      guidance");
    assertEquals(List.of("profile-incomplete"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("is guidance, and "), folder.text());
  }

  @Test
  void guidanceIsCountedByItself() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    assertEquals(List.of(), folder.codes());
    String words = OwnFolder.check(copy, LocalDate.of(2026, 11, 25)).judged().words();
    assertTrue(words.matches(".* of law, \\d+ of guidance, \\d+ of need, .*"), words);
  }

  /** A tighter value of guidance never stands in place of the law. */
  @Test
  void lawIsHeldBesideGuidance() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                "guidance/eu-mycotoxins.limits",
                "\nlimits\n",
                "\nlimits\n  mercury                      max 0.001 mg/kg  at 12 % moisture\n")
            .with("guidance/eu-mycotoxins.limits", "holds     3 limits", "holds     4 limits")
            .with(MEAL, "mercury: 0.10", "mercury: 3.2");
    assertTrue(
        folder.findings().stream().anyMatch(one -> one.severity() == Severity.ERROR),
        folder.text());
    assertTrue(folder.text().contains("the legal maximum (EU) is "), folder.text());
  }

  @Test
  void proteinOfTheOwnSpeciesNamesItsArticleOnce() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with("catfish/CF-31.recipe", "  groundnut-cake  ", "  catfish-trimmings-meal  ");
    List<Finding> found = of(folder, "own-species-protein");
    assertEquals(1, found.size(), folder.text());
    assertTrue(found.get(0).notes().toString().contains("1069/2009, Article 11(1)(d)"));
    assertFalse(folder.text().contains("inclusion of catfish-trimmings-meal"), folder.text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "end-looked-up: 2026-11-28 | end-looked-up: 2025-11-26 | 0",
        "end-looked-up: 2026-11-28 | end-looked-up: 2025-11-24 | 2",
        "end-looked-up: 2026-11-28 | end-looked-up: 2062-11-28 | 2",
        "ends: 2025-06-24 | ends: 2026-11-25 | 0",
      })
  void whatWasLookedUpHoldsForAYear(String from, String to, int warnings) throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with("sources.yaml", from, to);
    List<Finding> found = of(folder, "authorisation-ended");
    assertEquals(warnings, found.size(), folder.text());
    assertEquals(warnings, folder.findings().size(), folder.text());
  }

  /** No additive of astaxanthin is kept, so nobody is asked for the end of its act. */
  @Test
  void whereNothingNeedsTheActItsEndIsNotAskedFor() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(
        "ingredients/krill-meal.yaml",
        "digestibility:\n",
        """
        additive:
          functional-group: Colourants
          nutrient: astaxanthin
          source: eu-additive-numbers
        digestibility:
        """);
    assertTrue(folder.text().contains("the authorisation of astaxanthin by eu-carotenoids ended"));
  }
}
