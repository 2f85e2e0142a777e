package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.workspace.Shown;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of very many findings of a kind in one file the first hundred are printed, and all count. */
class ManyFindingsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String GOOD = "mix\n  lean  100 %\nlimits\n  crude-protein  min 1 %\n";

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void oneMeal() throws IOException {
    folder = new SmallFolder(root).ingredient("lean", "moisture: 12 %, crude-protein: 10 %");
  }

  @Test
  void aHundredOfAKindAreToldAsTheyAre() throws IOException {
    folder.recipe(GOOD + "  nonsense\n".repeat(100));
    CheckReport report = check().check();
    assertEquals(100, report.findings().size());
    assertEquals(report.findings(), report.shown());
  }

  @Test
  void ofMoreTheRestIsOneFindingAndAllCount() throws IOException {
    folder.recipe(GOOD + "  nonsense\n".repeat(20_000));
    CheckReports reports = check();
    CheckReport report = reports.check();
    assertEquals(20_000, report.findings().size());
    assertEquals(101, report.shown().size());
    Finding last = report.shown().get(100);
    assertEquals(
        "and 19900 more findings of the kind bound-missing from here on in this file",
        last.headline());
    assertEquals("A-1.recipe:106:3", last.span().place());
    assertEquals(20_000, report.count(Severity.ERROR));
    assertTrue(report.tally().contains(" checked: 20000 errors, 0 warnings"), report.tally());
    String json = ReportTexts.of(reports, "findings.json");
    assertTrue(json.contains("\"errors\" : 20000") || json.contains("\"errors\": 20000"), "json");
    ReportTexts.of(reports).forEach((name, text) -> assertTrue(text.length() < 600_000, name));
  }

  @Test
  void anotherFileAndAnotherKindHaveTheirOwnHundred() throws IOException {
    folder.recipe(GOOD + "  nonsense\n".repeat(102) + "  crude-protein  min 1 g\n".repeat(101));
    folder.with("B-1.recipe", "recipe B-1\n" + GOOD + "  nonsense\n".repeat(103));
    CheckReport report = check().check();
    List<String> told =
        report.shown().stream()
            .filter(one -> one.code().equals(Shown.MORE))
            .map(one -> one.span().file().path() + " " + one.headline())
            .toList();
    assertEquals(3, told.size(), told.toString());
    assertTrue(told.get(0).startsWith("A-1.recipe and 2 more findings of the kind "), told.get(0));
    assertTrue(told.get(1).startsWith("A-1.recipe and 1 more finding of the kind "), told.get(1));
    assertTrue(told.get(2).startsWith("B-1.recipe and 3 more findings of the kind "), told.get(2));
  }

  @Test
  void anErrorBehindManyWarningsIsTold() throws IOException {
    folder.recipe(GOOD + "  ash  max 5 %\n" + "  nonsense\n".repeat(500) + "  other  max 5 %\n");
    assertTrue(
        check().check().shown().stream()
            .anyMatch(one -> one.headline().startsWith("other is not")));
  }

  private CheckReports check() throws IOException {
    return OwnFolder.checkWithReports(root, PrintedPaths.BELOW_FOLDER, DAY);
  }
}
