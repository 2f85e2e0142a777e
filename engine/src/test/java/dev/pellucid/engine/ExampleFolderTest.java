package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example folder passes, and slips in a copy of it are named where they stand. */
class ExampleFolderTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Path.of("..", "recipes");

  @TempDir Path copy = Path.of("");

  @Test
  void passesWithoutAFinding() throws IOException {
    CheckReport report = Pellucid.check(EXAMPLE, "", DAY);
    assertEquals("", FindingText.of(report.findings()));
    assertEquals(14, report.recipes());
    assertTrue(report.limits() > 700, report.tally());
    assertEquals(List.of(), report.notChecked());
  }

  @Test
  void aTotalThatIsOffStopsTheFigures() throws IOException {
    CheckReport report = slipped("CG-36", " rest  ", " 1.00 %");
    assertCode(report, "total-is-off");
    assertEquals(List.of("CG-36"), report.notChecked());
  }

  @Test
  void theTallySaysWhichFileKeepsARecipeFromBeingChecked() throws IOException {
    copyExample();
    replace("ingredients/squid-meal.yaml", "moisture:", "moistur:");
    CheckReport report = Pellucid.check(copy, "", DAY);
    assertTrue(
        report.notChecked().stream().allMatch(one -> one.endsWith(" (mend squid-meal.yaml first)")),
        report.tally());
    assertTrue(!report.notChecked().isEmpty(), report.tally());
  }

  @Test
  void aBrokenFileOfPricesIsTheOnlyThingSaidAboutPrices() throws IOException {
    copyExample();
    replace("prices/2026-11.yaml", "maize:", "maise:");
    CheckReport report = Pellucid.check(copy, "", DAY);
    assertEquals(1, report.findings().size(), FindingText.of(report.findings()));
  }

  private void replace(String path, String from, String to) throws IOException {
    Path file = copy.resolve(path);
    String text = Files.readString(file);
    assertTrue(text.contains(from), text);
    Files.writeString(file, text.replace(from, to));
  }

  @Test
  void anUnknownIngredientIsNamed() throws IOException {
    CheckReport report = slipped("CG-36", "soybean-meal-48 ", "soybean-meal-84 ");
    assertCode(report, "unknown-ingredient");
  }

  @Test
  void aShareOutsideItsOwnBoundsIsNamed() throws IOException {
    CheckReport report = slipped("CG-36", "within 10 to 20 %", "within 10 to 14 %");
    assertCode(report, "outside-within");
  }

  @Test
  void anExpiredWaiverIsNamed() throws IOException {
    copyExample();
    CheckReport report = Pellucid.check(copy, "", LocalDate.of(2027, 4, 1));
    assertCode(report, "waiver-expired");
  }

  @Test
  void aMalformedWaiverDayIsSaidOnceAndWaivesNothing() throws IOException {
    CheckReport report = slipped("KF-29", "2027-03-31", "31/03/2027");
    List<String> codes = report.findings().stream().map(f -> f.code().text()).sorted().toList();
    assertEquals(List.of("above-maximum", "day-form"), codes, FindingText.of(report.findings()));
  }

  @Test
  void theLastDayOfAWaiverStillCounts() throws IOException {
    copyExample();
    CheckReport report = Pellucid.check(copy, "", LocalDate.of(2027, 3, 31));
    assertEquals(0, report.count(Severity.ERROR), FindingText.of(report.findings()));
  }

  private void assertCode(CheckReport report, String code) {
    List<Finding> errors =
        report.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList();
    assertTrue(
        errors.stream().anyMatch(f -> f.code().text().equals(code)),
        () -> FindingText.of(report.findings()));
    assertTrue(errors.stream().allMatch(f -> !f.helps().isEmpty()));
  }

  private CheckReport slipped(String code, String from, String to) throws IOException {
    copyExample();
    try (Stream<Path> files = Files.walk(copy)) {
      Path file = files.filter(p -> p.endsWith(code + ".recipe")).findFirst().orElseThrow();
      String text = Files.readString(file);
      assertTrue(text.contains(from), text);
      Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(from), to));
    }
    return Pellucid.check(copy, "", DAY);
  }

  private void copyExample() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = copy.resolve(EXAMPLE.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }
}
