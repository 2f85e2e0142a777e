package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the check says anew, and what is printed otherwise, in a comparison of the example folder.
 */
class CompareChecksTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final String SOYA = "soybean-meal-48              44.00 %";

  @TempDir Path copy;
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
  }

  @Test
  void aBanThatIsBrokenStandsInTheFirstLine() throws IOException {
    folder.with(
        GROWER,
        "  salt                         0.30 %\n",
        "  salt  0.30 %\n  catfish-trimmings-meal  2.00 %\n");
    CompareReport report = compared();
    assertTrue(report.tally().startsWith("1 error"), report.tally());
    assertFalse(report.tally().contains("0 "), report.tally());
    for (String form : forms(report)) {
      assertTrue(form.contains("own-species-protein"), form);
    }
    assertTrue(line(report.brief(), "CG-36").contains(" edited: 1 error"), report.brief());
  }

  @Test
  void aNewRecipeComesWithAllThatIsWrongInIt() throws IOException {
    Files.writeString(
        copy.resolve("catfish/CX-1.recipe"),
        Files.readString(copy.resolve(GROWER))
            .replace("recipe CG-36 ", "recipe CX-1 ")
            .replace(SOYA, "soybean-meal-48  34.00 %"));
    CompareReport report = compared();
    assertTrue(
        report.tally().startsWith("2 errors, 1 warning and 1 note are new; "), report.tally());
    for (String form : forms(report)) {
      assertTrue(form.contains("outside-within"), form);
    }
    assertEquals(Optional.empty(), compared().refused(Severity.ERROR).filter(String::isEmpty));
    assertTrue(
        report.refused(Severity.ERROR).orElse("").startsWith("2 errors are new, the first "));
    assertTrue(report.refused(Severity.WARNING).orElse("").startsWith("2 errors and 1 warning "));
  }

  @Test
  void aSpeciesThatIsToldOtherwiseIsSeenInTheFeedsItWarnsOf() throws IOException {
    folder.with("species/common-carp.yaml", "pellet: 3 to 4.5 mm", "pellet: 3 to 3.5 mm");
    CompareReport report = compared();
    assertTrue(report.tally().contains("warning"), report.tally());
    String text = report.text();
    assertTrue(text.contains("KG-33  not touched, changed by its data\n  new warning "), text);
    assertTrue(text.contains("  because of species/common-carp.yaml\n"), text);
  }

  @Test
  void aFlushIsPrintedOnTheSheetsOfThoseThatMindIt() throws IOException {
    String sequence = Files.readString(copy.resolve("practice/sequence.yaml"));
    Files.writeString(
        copy.resolve("practice/sequence.yaml"),
        sequence.replace("quantity: 5 kg", "quantity: 50 kg"));
    CompareReport report = compared();
    assertTrue(report.text().contains("sheet to print again: before the start"), report.text());
    assertTrue(report.text().contains("because of practice/sequence.yaml"), report.text());
    assertTrue(report.brief().contains("papers to print again"), report.brief());
  }

  @Test
  void aFeedThatPassesByAWaiverAloneIsSaidToDoSo() throws IOException {
    folder.with(GROWER, SOYA, "soybean-meal-48  41.00 %");
    folder.with(
        GROWER,
        "process\n",
        "waivers\n  crude-protein  min 30 %  until 2026-12-31  by \"quality manager\"  because"
            + " \"less soya\"\n\nprocess\n");
    CompareReport report = compared();
    String words = "CG-36 passes only by a waiver: crude-protein min 30 % in 95 % of batches";
    for (String form : List.of(report.text(), report.brief(), report.markdown(), report.html())) {
      assertTrue(form.contains(words), form);
    }
    assertTrue(report.tally().endsWith(", 1 feed passes only by a waiver"), report.tally());
  }

  @Test
  void aGradeOfAPremixIsToldOfThePremixItself() throws IOException {
    String grade = "ingredients/ascorbyl-phosphate-35.yaml";
    folder.with(grade, "vitamin-c: 35", "vitamin-c: 30");
    String text = compared().text();
    int premix = text.indexOf("\nVIT-WW  premix, not touched, changed by its data\n");
    assertTrue(premix > 0, text);
    String section = text.substring(premix);
    assertTrue(section.contains("  ascorbyl-phosphate-35 "), section);
    assertTrue(section.contains("  cost "), section);
    assertTrue(section.contains("  sheet to print again: "), section);
    assertTrue(section.contains("  because of " + grade + "\n"), section);
  }

  @Test
  void aNameAShelfLifeAndWaterAreTold() throws IOException {
    folder.with(GROWER, "4 mm", "4.0 mm");
    folder.with(GROWER, "shelf-life        60 d", "shelf-life        90 d");
    folder.with(GROWER, "on-mix            18 %", "on-mix            20 %");
    String text = compared().text();
    assertTrue(text.contains("  name \""), text);
    assertTrue(text.contains("  shelf life 60 days -> 90 days\n"), text);
    assertTrue(text.contains("  water added "), text);
    assertTrue(text.contains("  drying Oven, 34 trays "), text);
    assertTrue(text.contains("  label: Best before "), text);
    assertTrue(text.contains("label to print again: "), text);
  }

  @Test
  void aFindingOfWhichOnlyTheFigureMovesIsNotNew() throws IOException {
    folder.with(GROWER, SOYA, "soybean-meal-48  40.00 %");
    Path before = Files.createDirectories(copy.resolveSibling(copy.getFileName() + "-before"));
    SlippedFolder.withRecords(before).with(GROWER, SOYA, "soybean-meal-48  39.90 %");
    CompareReport report =
        Pellucid.compare(FolderState.at(before), FolderState.at(copy), DAY, "compare.html");
    assertTrue(
        report.tally().startsWith("no finding is new and none is gone, 1 error stays; "),
        report.tally());
  }

  @Test
  void whatIsNotLookedForAnyMoreIsNotToldAsGone() throws IOException {
    folder.with(GROWER, SOYA, "soybean-meal-49  40.00 %");
    Path before = Files.createDirectories(copy.resolveSibling(copy.getFileName() + "-before"));
    SlippedFolder.withRecords(before).with(GROWER, SOYA, "soybean-meal-48  40.00 %");
    CompareReport report =
        Pellucid.compare(FolderState.at(before), FolderState.at(copy), DAY, "compare.html");
    assertTrue(
        report.tally().startsWith("1 error is new, 1 error is not looked for any more; "),
        report.tally());
  }

  @Test
  void aFeedIsShownInFullByItsCode() throws IOException {
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.34");
    CompareReport report = compared();
    String one = report.of("CG-36").orElse("");
    assertTrue(one.startsWith(report.tally() + "\nCG-36  not touched"), one);
    assertEquals(Optional.empty(), report.of("CG-37"));
    for (String line : report.brief().lines().toList()) {
      assertFalse(line.startsWith(" "), line);
    }
  }

  /** A price of a vitamin that is weighed by the gram moves the cost by next to nothing. */
  @Test
  void whatMovesByLessThanAThousandthIsSparedAPerson() throws IOException {
    folder.with("prices/2026-11.yaml", "biotin-2: 15.00", "biotin-2: 15.10");
    CompareReport report = compared();
    assertTrue(report.text().contains(" by less than a thousandth of each figure"), report.text());
    assertTrue(report.json().contains("\"code\": \"CG-36\""), report.json());
    assertFalse(report.text().contains("\nCG-36  "), report.text());
  }

  private static String line(String text, String code) {
    return text.lines().filter(line -> line.startsWith(code)).findFirst().orElse("");
  }

  private static List<String> forms(CompareReport report) {
    return List.of(report.text(), report.markdown(), report.html(), report.json());
  }

  private CompareReport compared() throws IOException {
    return Pellucid.compare(FolderState.at(EXAMPLE), FolderState.at(copy), DAY, "compare.html");
  }
}
