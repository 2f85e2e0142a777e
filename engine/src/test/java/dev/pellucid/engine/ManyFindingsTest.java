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

/** Of a file with very many findings the first thousand are told, and all are counted. */
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
  void aThousandAreToldAsTheyAre() throws IOException {
    folder.recipe(GOOD + "  nonsense\n".repeat(1000));
    List<Finding> findings = check().check().findings();
    assertEquals(1000, findings.size());
    assertTrue(findings.stream().noneMatch(one -> one.code().equals(Shown.MORE)));
  }

  @Test
  void ofMoreTheRestIsOneFindingAndCountsInTheTally() throws IOException {
    folder.recipe(GOOD + "  nonsense\n".repeat(20_000));
    CheckReports reports = check();
    CheckReport report = reports.check();
    assertEquals(1001, report.findings().size());
    Finding last = report.findings().get(1000);
    assertEquals(
        "and 19000 more findings from here on in this file: 19000 errors", last.headline());
    assertEquals("A-1.recipe:1006:3", last.span().place());
    assertEquals(20_000, report.count(Severity.ERROR));
    assertTrue(report.tally().contains(" checked: 20000 errors, 0 warnings"), report.tally());
    String json = ReportTexts.of(reports, "findings.json");
    assertTrue(json.contains("\"errors\" : 20000") || json.contains("\"errors\": 20000"), "json");
    ReportTexts.of(reports).forEach((name, text) -> assertTrue(text.length() < 6_000_000, name));
  }

  @Test
  void anotherFileHasItsOwnThousand() throws IOException {
    folder.recipe(GOOD + "  nonsense\n".repeat(1002));
    folder.with("B-1.recipe", "recipe B-1\n" + GOOD + "  nonsense\n".repeat(1003));
    CheckReport report = check().check();
    assertEquals(
        List.of(
            "and 2 more findings from here on in this file: 2 errors",
            "and 3 more findings from here on in this file: 3 errors"),
        report.findings().stream()
            .filter(one -> one.code().equals(Shown.MORE))
            .map(Finding::headline)
            .toList());
    assertEquals(2005, report.count(Severity.ERROR));
  }

  private CheckReports check() throws IOException {
    return Pellucid.checkWithReports(root, PrintedPaths.BELOW_FOLDER, DAY);
  }
}
