package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example folder passes, and slips in a copy of it are named where they stand. */
class ExampleFolderTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();

  @TempDir Path copy = Path.of("");

  @Test
  void passesWithoutAFinding() throws IOException {
    CheckReport report = OwnFolder.check(EXAMPLE, DAY);
    assertEquals("", FindingText.of(report.findings()));
    assertEquals(17, report.recipes());
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
    CheckReport report = OwnFolder.check(copy, DAY);
    assertTrue(
        report.notChecked().stream().allMatch(one -> one.endsWith(" (fix squid-meal.yaml first)")),
        report.tally());
    assertTrue(!report.notChecked().isEmpty(), report.tally());
  }

  @Test
  void aBrokenFileOfPricesIsTheOnlyThingSaidAboutPrices() throws IOException {
    copyExample();
    replace("prices/2026-11.yaml", "maize:", "maise:");
    CheckReport report = OwnFolder.check(copy, DAY);
    assertEquals(1, report.findings().size(), FindingText.of(report.findings()));
  }

  /** Four ways to lose the water, each of which once ended in an exception. */
  @ParameterizedTest
  @CsvSource({
    "'  stability: stable','    stability: stable'",
    "'  unit: \"%\"','\"%\" unit:'",
    "'moisture:\n',''",
    "'title: Moisture','title: {Moisture'"
  })
  void aBrokenFileOfNutrientsKeepsEveryFeedFromBeingChecked(String from, String to)
      throws IOException {
    copyExample();
    String first = from.replace("\\n", "\n");
    Path file = copy.resolve("nutrients/1-whole.yaml");
    Files.writeString(file, Files.readString(file).replaceFirst(Pattern.quote(first), to));
    everyFeedIsBlockedBy("1-whole.yaml");
  }

  @Test
  void aFileOfNutrientsInAnotherEncodingKeepsEveryFeedFromBeingChecked() throws IOException {
    copyExample();
    Path file = copy.resolve("nutrients/6-vitamins.yaml");
    Files.write(file, Files.readString(file).getBytes(StandardCharsets.UTF_16));
    everyFeedIsBlockedBy("6-vitamins.yaml");
  }

  @Test
  void aFolderWithoutNutrientsIsOneFinding() throws IOException {
    copyExample();
    try (Stream<Path> files = Files.list(copy.resolve("nutrients"))) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    CheckReport report = OwnFolder.check(copy, DAY);
    assertCode(report, "data-no-moisture-nutrient");
    assertEquals(1, report.findings().size(), FindingText.of(report.findings()));
    assertEquals("pellucid.yaml", report.findings().get(0).span().file().path());
    everyFeedIsBlockedBy("nutrients/");
  }

  /** In every goal, and with one finding at most beside those of the records that are kept. */
  private void everyFeedIsBlockedBy(String mendFirst) throws IOException {
    CheckReport report = OwnFolder.check(copy, DAY);
    String all = FindingText.of(report.findings());
    assertTrue(report.count(Severity.ERROR) > 0, all);
    assertTrue(report.findings().size() <= 3, all);
    assertEquals(0, report.limits());
    assertEquals(1, report.notChecked().size(), report.tally());
    assertTrue(report.tally().endsWith(" (fix " + mendFirst + " first)"), report.tally());
    SheetReport sheets = OwnFolder.batchSheets(copy, DAY, Version.committed("1a2b3c4"));
    assertEquals(List.of(), sheets.sheets());
    assertTrue(sheets.withheld().containsAll(List.of("CG-36", "VIT-WW")));
    assertEquals(17, OwnFolder.figures(copy, "", false).unmade().size());
    assertEquals(
        "CG-36 cannot be computed: fix " + mendFirst + " first",
        OwnFolder.explain(copy, DAY, "CG-36", "crude-protein").problem().orElseThrow());
    OwnFolder.report(copy, PrintedPaths.BELOW_FOLDER, DAY, List.of(), copy.resolve("target"));
    CompareReport compared =
        Pellucid.compare(FolderState.at(EXAMPLE), FolderState.at(copy), DAY, "");
    assertTrue(compared.text().contains("NOT TO BE TRUSTED, now: "), compared.text());
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
    CheckReport report = OwnFolder.check(copy, LocalDate.of(2027, 4, 1));
    assertCode(report, "waiver-expired");
  }

  @Test
  void aMalformedWaiverDayIsSaidOnceAndWaivesNothing() throws IOException {
    CheckReport report = slipped("KF-29", "2027-02-20", "31/03/2027");
    List<String> codes = report.findings().stream().map(f -> f.code().text()).sorted().toList();
    assertEquals(List.of("above-maximum", "day-form"), codes, FindingText.of(report.findings()));
  }

  @Test
  void theLastDayOfAWaiverStillCounts() throws IOException {
    copyExample();
    CheckReport report = OwnFolder.check(copy, LocalDate.of(2027, 2, 20));
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
      Files.writeString(file, text.replaceFirst(Pattern.quote(from), to));
    }
    return OwnFolder.check(copy, DAY);
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
