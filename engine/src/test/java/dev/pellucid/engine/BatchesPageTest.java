package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.goal.SiteReport;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of the batches of a recipe. */
class BatchesPageTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);

  /** Hundredths of a point of moisture, tenths of a kg in the last bag; a result is missing. */
  private static final int[] WET = {
    10, -25, 30, 5, -40, 15, 45, -1000, 120, 40, 85, 60, 95, 70, 50
  };

  private static final int[] REST = {5, 8, 2, 6, 4, 9, 5, 7, 3, 6, 5, 2, 8, 1, 4};

  @TempDir Path folder = Path.of("");
  @TempDir Path out = Path.of("");

  @BeforeEach
  void batches() throws IOException {
    SmallFolder small =
        new SmallFolder(folder)
            .with("plant/shed.yaml", "name: Shed\nair-temperature: 25 °C\nshrink: 2.5 %\n")
            .with(
                "prices/2026.yaml",
                "from: 2026-08-01\nsource: workshop\nprices: {pea-meal: 0.50 EUR/kg, oat-meal: 0.40 EUR/kg}\n")
            .ingredient("pea-meal", "moisture: 12 %, crude-protein: 24 ± 1.0 %")
            .ingredient("oat-meal", "moisture: 10 %, crude-protein: 13 ± 0.8 %")
            .recipe(
                """
                  batch 100 kg weighed
                mix
                  pea-meal 60 %
                  oat-meal rest
                limits
                  crude-protein min 5 %
                process
                  add-water on-mix 18 %
                  dry moisture 9 % accept 8 to 10 %
                """);
    for (int i = 0; i < WET.length; i++) {
      LocalDate day = FIRST.plusDays(3L * i);
      small.with("batches/A-1-" + day + "-1.yaml", record(day.plusDays(2), WET[i], REST[i], i));
    }
  }

  private static String record(LocalDate day, int wet, int rest, int i) {
    String results =
        wet < -500
            ? ""
            : String.format(
                Locale.ROOT,
                "results:%n  - {day: %s, by: laboratory, moisture: %.2f %%, crude-protein: %.2f %%}%n",
                day,
                9 + wet / 100.0,
                i == 5 ? 2.01 : 20.05 * (91 - wet / 100.0) / 91 + (i % 3 - 1) * 0.15);
    return "size: 100 kg\nweighed:\n  - {line: pea-meal, weight: 60 kg}\n"
        + "  - {line: oat-meal, weight: 40 kg}\nwater: 18 kg\ndrying:\n  before: 24 %\n"
        + "  readings:\n    - {at: 3 h, moisture: 15 %}\n    - {at: 6 h, moisture: 9 %}\n"
        + "bags: {full: 3, of: 25 kg, rest: "
        + String.format(Locale.ROOT, "%.1f", 17.8 + rest * 0.3)
        + " kg}\nsamples:\n  - {weight: 500 g, place: shelf 4, until: 2027-09-01}\n"
        + "release: {decision: released, by: shift lead}\n"
        + results;
  }

  private String page() throws IOException {
    OwnFolder.report(folder, new PrintedPaths("farm/"), DAY, List.of(), out);
    return Files.readString(out.resolve("batches/A-1.html"));
  }

  @Test
  void readsAsAccepted() throws IOException {
    Approvals.verify(
        Inlined.byName(page()), Approvals.NAMES.withParameters().forFile().withExtension(".html"));
  }

  @Test
  void theIndexAndTheFeedLeadToIt() throws IOException {
    SiteReport report = OwnFolder.report(folder, new PrintedPaths(""), DAY, List.of(), out);
    String index = Files.readString(out.resolve("index.html"));
    assertTrue(index.contains("<a href=\"batches/A-1.html\">A-1</a></th><td>15</td>"), index);
    assertTrue(index.contains("<span class=\"bad\">Moisture</span>"), index);
    assertTrue(Files.readString(out.resolve("feeds/A-1.html")).contains("../batches/A-1.html"));
    long pages;
    try (var files = Files.walk(out)) {
      pages = files.filter(one -> one.toString().endsWith(".html")).count();
    }
    assertEquals(pages, report.pages());
  }

  /** What a chart tells by shape, the table tells in words. */
  @Test
  void asManyMarksInThePictureAsInWords() throws IOException {
    String page = page();
    int first = page.indexOf("<svg", page.indexOf("Moisture by the laboratory"));
    String moisture = page.substring(first, page.indexOf("</table>", first));
    String picture = moisture.substring(0, moisture.indexOf("</svg>"));
    assertEquals(14, count(picture, "<circle") + count(picture, "stroke-width=\"2\""));
    assertEquals(
        count(picture, "stroke-width=\"2\""), count(moisture, "<span class=\"bad\">"), moisture);
    assertTrue(count(picture, "stroke-width=\"2\"") > 2, picture);
  }

  @Test
  void theSumsAreThoseOfTheRows() throws IOException {
    String page = page();
    String table = page.substring(page.indexOf("Beyond the plan EUR"));
    List<String> rows = List.of(table.split("<tr", -1));
    double beyond = 0;
    double money = 0;
    for (String row : rows) {
      if (row.contains("A-1-2026-")) {
        List<String> cells = cells(row);
        beyond += Double.parseDouble(cells.get(7));
        money += Double.parseDouble(cells.get(8));
        assertEquals(money, Double.parseDouble(cells.get(9)), 0.08, row);
      }
    }
    List<String> sum =
        cells(rows.stream().filter(it -> it.contains("Together")).findFirst().orElseThrow());
    assertEquals(beyond, Double.parseDouble(sum.get(7)), 0.08);
    assertEquals(money, Double.parseDouble(sum.get(8)), 0.08);
    assertFalse(Math.abs(beyond) < 1, "a sum of nothing");
  }

  private static List<String> cells(String row) {
    return Pattern.compile("<td[^>]*>([^<]*)</td>")
        .matcher(row)
        .results()
        .map((MatchResult it) -> it.group(1))
        .toList();
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  @Test
  void aRecipeOfWhichNothingWasMadeHasNone() throws IOException {
    try (var files = Files.list(folder.resolve("batches"))) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    OwnFolder.report(folder, new PrintedPaths(""), DAY, List.of(), out);
    assertFalse(Files.exists(out.resolve("batches")));
    assertFalse(Files.readString(out.resolve("index.html")).contains("Batches"));
    assertFalse(Files.readString(out.resolve("feeds/A-1.html")).contains("batches/"));
  }
}
