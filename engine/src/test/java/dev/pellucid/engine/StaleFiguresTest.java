package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.FiguresReport;
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
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a check says of records of figures that are kept. */
class StaleFiguresTest extends FiguresOfTheExample {
  @Test
  void whereNoneIsKeptNothingIsSaid() throws IOException {
    folder.with("ingredients/maize.yaml", "crude-protein: 8.75", "crude-protein: 7.75");
    assertEquals("", said());
  }

  @Test
  void anAnalysisMakesItStaleInTheLineOfTheNutrient() throws IOException {
    written();
    folder.with("ingredients/maize.yaml", "crude-protein: 8.75", "crude-protein: 7.75");
    Finding stale =
        said(DAY).stream()
            .filter(finding -> finding.span().file().path().equals(RECORD))
            .findFirst()
            .orElseThrow();
    assertEquals(Severity.WARNING, stale.severity());
    assertTrue(
        lines(RECORD).get(stale.span().from().line() - 1).startsWith("  crude-protein  "),
        stale.span().place());
    Approvals.verify(FindingText.of(stale));
  }

  @Test
  void eachRecordIsNamedOnce() throws IOException {
    written();
    folder.with("prices/2026-11.yaml", "maize: 0.24", "maize: 0.34");
    List<Finding> stale = said(DAY);
    assertEquals(
        stale.stream().map(finding -> finding.span().file().path()).distinct().toList(),
        stale.stream().map(finding -> finding.span().file().path()).toList());
    assertTrue(stale.size() > 2, FindingText.of(stale));
    for (Finding one : stale) {
      assertTrue(one.headline().startsWith("cost is now "), one.headline());
    }
  }

  @Test
  void lineEndsAndAByteOrderMarkAreNoDifference() throws IOException {
    written();
    Path record = copy.resolve(RECORD);
    String text = Files.readString(record);
    for (String other :
        List.of(
            text.replace("\n", "\r\n"),
            "\uFEFF" + text.replace("\n", "\r\n"),
            text.replace("\n", "\r"),
            text.stripTrailing())) {
      Files.writeString(record, other);
      assertEquals("", said());
      assertEquals("0 records of figures written, 17 unchanged", made().tally());
    }
  }

  @Test
  void aStaleOneWithOtherLineEndsIsNamedAtItsPlace() throws IOException {
    written();
    Path record = copy.resolve(RECORD);
    String text = Files.readString(record);
    int line = lines(RECORD).indexOf("  salt                         0.30 %") + 1;
    Files.writeString(record, "\uFEFF" + text.replace("0.30 %", "0.35 %").replace("\n", "\r\n"));
    assertTrue(
        said()
            .startsWith(
                RECORD
                    + ":"
                    + line
                    + ":32: warning: salt is now 0.30 %, the record says 0.35 % [figures-stale]\n"),
        said());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1999-12-31", "2026-11-25", "2027-02-20", "2027-02-21", "2099-01-01"})
  void theDayDoesNotMatter(String day) throws IOException {
    written();
    assertEquals("", FindingText.of(said(LocalDate.parse(day))));
  }

  @Test
  void aPriceOfALaterDayShowsFromTheDayOnWhichItIsWritten() throws IOException {
    written();
    Files.writeString(
        copy.resolve("prices/2098-01.yaml"),
        "from: 2098-01-01\nsource: scenario\nprices:\n  soybean-meal-48: 0.60 EUR/kg\n");
    assertTrue(said().contains(RECORD), said());
    assertTrue(said().contains("cost is now "), said());
    assertEquals(List.of("cost"), List.copyOf(moved(RECORD)));
  }

  /** A recipe that cannot be computed has its own errors; its record is not judged. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "catfish/CG-36.recipe|soybean-meal-48  |soybean-meal-84  |CG-36, its findings must be"
            + " fixed first",
        "catfish/CG-36.recipe| rest  | 1.00 %  |CG-36, its findings must be fixed first",
        "catfish/CG-36.recipe|min 34 %|min 34|CG-36, its findings must be fixed first",
        "ingredients/soybean-meal-48.yaml|moisture: |moistur: |CG-36, fix soybean-meal-48.yaml"
            + " first",
        "limits/catfish-grower.limits|min 29 %|min 29|CG-36, fix catfish-grower.limits first",
        "premixes/VIT-WW.premix|160 mg/kg|160|CG-36, fix VIT-WW.premix first",
        "prices/2026-11.yaml|maize: 0.24 EUR/kg|maize: 0.24|CG-36, fix 2026-11.yaml first",
      })
  void oneThatCannotBeMadeIsNotJudged(String path, String from, String to, String words)
      throws IOException {
    written();
    folder.with(path, from, to);
    assertTrue(OwnFolder.check(copy, DAY).count(Severity.ERROR) > 0);
    assertFalse(said().contains(RECORD), said());
    FiguresReport report = made();
    assertTrue(report.unmade().contains(words), report.unmade().toString());
    assertTrue(report.changes().stream().noneMatch(one -> one.path().equals(RECORD)));
    assertTrue(report.tally().endsWith(" not made"), report.tally());
  }

  @Test
  void whatOneDoesNotHangOnDoesNotKeepItFromBeingMade() throws IOException {
    written();
    folder.with("lots/2026-11.yaml", "quantity: ", "quantity: x");
    folder.with("limits/trout-grower.limits", "min ", "mni ");
    folder.with("ingredients/krill-meal.yaml", "moisture: ", "moistur: ");
    folder.with("prices/2026-11.yaml", "soybean-meal-48: 0.44", "soybean-meal-48: 0.47");
    assertTrue(said().contains(RECORD), said());
    assertTrue(made().changes().stream().anyMatch(one -> one.path().equals(RECORD)));
  }

  @Test
  void oneWhoseRecipeIsGoneIsToldAndLeftThere() throws IOException {
    written();
    Files.delete(copy.resolve(GROWER));
    Files.move(copy.resolve("carp/KG-33.recipe"), copy.resolve("catfish/KG-33.recipe"));
    FiguresReport report = written();
    assertEquals(List.of("carp/KG-33.figures", RECORD), report.withoutRecipe());
    assertTrue(Files.exists(copy.resolve(RECORD)));
    Approvals.verify(said());
  }

  @Test
  void oneThatCannotBeReadIsAFindingAndIsWrittenAnew() throws IOException {
    written();
    Path record = copy.resolve(RECORD);
    String text = Files.readString(record);
    Files.write(record, (text + "°").getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(List.of("not-utf-8"), codes());
    Files.write(record, text.getBytes(StandardCharsets.UTF_16));
    assertEquals(List.of("utf-16"), codes());
    assertEquals("1 record of figures written, 16 unchanged", written().tally());
    assertEquals(text, Files.readString(record));
    assertEquals("", said());
  }

  @Test
  void whatChangedByHandIsToldInWords() throws IOException {
    written();
    Path record = copy.resolve(RECORD);
    String text = Files.readString(record);
    StringBuilder all = new StringBuilder();
    for (String other :
        List.of(
            "",
            "\n",
            text.replace("by mvn", "by hand, not by mvn"),
            text.replace(
                "title                        African", "title                        Asian"),
            text.replace("  fish                         50 to 250 g\n", ""),
            text.replace("  fish                         50 to 250 g\n", "  fish\n"),
            text.replace("and 2 g on top of each weighing", ""),
            text.replace("and 0.02 % on top", "and 0.04 % on top"),
            text.replace("salt    ", "slat    "),
            text.replace("\ncoat\n", "\ncoat\n  krill-oil                    1.00 %\n"),
            text.replace("  salt                         0.30 %\n", "")
                .replace("\ncoat\n", "  salt                         0.30 %\n\ncoat\n"),
            text.replace("max 6 % ", "max 7 % "),
            text.replace("34.83 %      min 34 %", "34.93 %      min 34 %"),
            text.replace(
                "  crude-fat                    7.374", "  crude-fat                    7.5"),
            text.substring(0, text.indexOf("\nlimits\n")),
            text + "  ash                          9 %\n",
            "<<<<<<< HEAD\n" + text,
            text.replaceAll("(?m)^", "\u0007"))) {
      assertFalse(other.equals(text), "no such text");
      Files.writeString(record, other);
      List<Finding> said = said(DAY);
      assertEquals(1, said.size(), FindingText.of(said));
      all.append(FindingText.of(said)).append('\n');
    }
    Approvals.verify(all.toString());
  }

  @Test
  void theReportsTellThemWhereTheyLie() throws IOException {
    written();
    folder.with("prices/2026-11.yaml", "soybean-meal-48: 0.44", "soybean-meal-48: 0.47");
    CheckReports reports = OwnFolder.checkWithReports(copy, new PrintedPaths("feeds/"), DAY);
    assertEquals(0, reports.check().count(Severity.ERROR));
    for (String name : List.of("findings.sarif", "findings.json", "summary.md")) {
      String text = text(reports, name);
      assertTrue(text.contains("figures-stale") && text.contains("feeds/" + RECORD), text);
    }
    String cases = text(reports, "limits-junit.xml");
    assertTrue(cases.contains("name=\"feeds/" + RECORD + "\" time=\"0\"/>"), cases);
    assertFalse(cases.contains("figures-stale"), cases);
  }

  private List<String> codes() throws IOException {
    return said(DAY).stream().map(finding -> finding.code().text()).toList();
  }

  private static String text(CheckReports reports, String name) {
    return ReportTexts.of(reports, name);
  }
}
