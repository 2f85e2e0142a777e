package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.ExplainReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A feed of which an ingredient does not tell its moisture has no figures, in any output. */
class UntoldMoistureTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String MEAL = "ingredients/soybean-meal-48.yaml";

  @TempDir Path copy = Path.of("");

  private SlippedFolder example() throws IOException {
    return SlippedFolder.withRecords(copy);
  }

  private SlippedFolder folder() throws IOException {
    return without(example(), MEAL);
  }

  private SlippedFolder without(SlippedFolder folder, String path) throws IOException {
    String text = Files.readString(copy.resolve(path));
    String moisture =
        text.lines().filter(line -> line.contains(" moisture: ")).findFirst().orElseThrow();
    return folder.with(path, moisture + "\n", "");
  }

  @Test
  void itsFeedsAreNotCheckedAndNothingElseIsSaidOfThem() throws IOException {
    SlippedFolder folder = folder();
    CheckReport report = OwnFolder.check(copy, DAY);
    List<String> codes = report.findings().stream().map(it -> it.code().text()).toList();
    assertEquals(List.of("data-no-moisture"), codes, folder.text());
    // That of the premix; the two of feeds could not be held against anything.
    assertEquals(1, report.batches(), report.tally());
    assertTrue(report.tally().contains("(fix soybean-meal-48.yaml first)"), report.tally());
    assertTrue(report.notChecked().get(0).contains("CF-31, CF-32, CG-36, "), report.tally());
  }

  @Test
  void reportsForMachinesSayThatTheyAreNotChecked() throws IOException {
    folder();
    String all =
        String.join(
            "\n",
            ReportTexts.of(OwnFolder.checkWithReports(copy, PrintedPaths.BELOW_FOLDER, DAY))
                .values());
    String json = all.replaceAll("\\s+", "");
    assertTrue(json.contains("\"checked\":false"), all);
    assertTrue(json.contains("\"mendFirst\":[\"soybean-meal-48.yaml\"]"), all);
    assertFalse(all.contains("NaN"));
  }

  @Test
  void noSheetNoFiguresNoExplanation() throws IOException {
    folder();
    SheetReport sheets = OwnFolder.batchSheets(copy, DAY, Version.committed("1"));
    assertTrue(sheets.sheets().stream().noneMatch(sheet -> sheet.code().equals("CG-36")));
    assertEquals(List.of(), OwnFolder.figures(copy, "CG-36", false).changes());
    ExplainReport report = OwnFolder.explain(copy, DAY, "CG-36", "crude-protein");
    assertTrue(report.text().isEmpty(), report.text());
  }

  @Test
  void compareSaysThatTheyCannotBeComputedAnyMore() throws IOException {
    folder();
    String text =
        Pellucid.compare(FolderState.at(Example.whole()), FolderState.at(copy), DAY, "all.html")
            .text();
    assertTrue(text.contains("cannot be computed any more"), text);
  }

  @Test
  void throughAPremixTheFileAtFaultIsNamed() throws IOException {
    without(example(), "ingredients/selenite-1.yaml");
    CheckReport report = OwnFolder.check(copy, DAY);
    assertEquals(1, report.notChecked().size(), report.tally());
    assertTrue(report.notChecked().get(0).endsWith(" (fix selenite-1.yaml first)"), report.tally());
  }

  @Test
  void throughReworkTheFileAtFaultIsNamed() throws IOException {
    SlippedFolder folder = without(example(), "ingredients/groundnut-cake.yaml");
    folder.with(
        "catfish/CG-36.recipe", "  salt ", "  rework CF-31                 3.00 %\n  salt ");
    CheckReport report = OwnFolder.check(copy, DAY);
    assertTrue(
        report.notChecked().stream()
            .anyMatch(
                one -> one.contains("CG-36") && one.endsWith("(fix groundnut-cake.yaml first)")),
        report.tally());
  }

  @Test
  void ofOneThatNobodyUsesOnlyItsOwnFindingIsSaid() throws IOException {
    SlippedFolder folder = example();
    Files.writeString(
        copy.resolve("ingredients/lupin.yaml"),
        """
        name: Lupin
        groups: []
        form: meal
        contents:
          - source: scenario
            crude-protein: 34 %
        """);
    CheckReport report = OwnFolder.check(copy, DAY);
    assertEquals(1, report.findings().size(), folder.text());
    assertEquals(List.of(), report.notChecked());
  }

  @Test
  void theMostOfALotsMoistureIsToldAndNotReckonedWith() throws IOException {
    SlippedFolder folder = example();
    folder.with("lots/2026-11.yaml", "moisture: 11.2 %", "moisture: below 12 %");
    List<Finding> found = folder.findings();
    assertEquals(List.of("data-no-moisture"), folder.codes(), folder.text());
    assertTrue(found.get(0).headline().startsWith("lot SB-0411 gives the most of its moisture"));
  }
}
