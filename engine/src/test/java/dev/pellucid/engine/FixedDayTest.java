package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.goal.ReportSettings;
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

/** A day that was given once and stays is told when the clock has gone on. */
class FixedDayTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path root = Path.of("");

  @BeforeEach
  void oneFeed() throws IOException {
    new SmallFolder(root)
        .ingredient("lean", "moisture: 12 %, crude-protein: 10 %")
        .recipe("mix\n  lean  100 %\nlimits\n  crude-protein  min 1 %\n");
  }

  @Test
  void thirtyDaysAreNothingOdd() throws IOException {
    assertEquals(List.of(), on(DAY.plusDays(30)));
    assertEquals(List.of(), on(DAY.minusDays(30)));
    assertEquals(
        List.of(),
        OwnFolder.checkWithReports(root, PrintedPaths.BELOW_FOLDER, DAY).check().findings());
  }

  @Test
  void oneMoreIsAWarningThatSaysByHowMany() throws IOException {
    List<Finding> findings = on(DAY.plusDays(400));
    assertEquals(1, findings.size());
    Finding only = findings.get(0);
    assertEquals(Severity.WARNING, only.severity());
    assertEquals("day-far-off", only.code().text());
    assertEquals("pellucid.yaml:1:1", only.span().place());
    assertEquals(
        "the day is 2026-11-25, which is 400 days before today, 2027-12-30", only.headline());
    assertTrue(only.notes().get(0).contains("use-by"), only.notes().toString());
    assertEquals(1, on(DAY.plusDays(31)).size());
  }

  @Test
  void aDayToComeIsToldToo() throws IOException {
    assertEquals(
        "the day is 2026-11-25, which is 31 days after today, 2026-10-25",
        on(DAY.minusDays(31)).get(0).headline());
  }

  private List<Finding> on(LocalDate today) throws IOException {
    return OwnFolder.checkWithReports(
            root, ReportSettings.of(PrintedPaths.BELOW_FOLDER), DAY, today)
        .check()
        .findings();
  }
}
