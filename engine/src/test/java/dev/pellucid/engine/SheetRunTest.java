package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of a whole folder, premixes with them. */
class SheetRunTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Path.of("..", "recipes");

  @TempDir Path copy;

  @Test
  void everyRecipeAndEveryPremixHasASheet() throws IOException {
    SheetReport report = sheets(EXAMPLE);
    assertEquals(List.of(), report.withheld());
    List<String> codes = report.sheets().stream().map(Sheet::code).toList();
    assertTrue(codes.containsAll(List.of("CG-36", "VIT-WW", "MIN-TS")), codes.toString());
    assertTrue(report.tally().matches("\\d+ batch sheets \\(6 of premixes\\)"), report.tally());
  }

  @Test
  void aPremixThatMustBeMendedHasNone() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = copy.resolve(EXAMPLE.relativize(file).toString());
        if (!to.startsWith(copy.resolve("target"))) {
          Files.createDirectories(to.getParent());
          Files.copy(file, to);
        }
      }
    }
    Path premix = copy.resolve("premixes/VIT-WW.premix");
    String text = Files.readString(premix);
    Files.writeString(premix, text.replace("  vitamin-c ", "  vitamin-zzz "));
    Path written = Files.createDirectories(copy.resolve("target"));
    Files.writeString(written.resolve("VIT-WW.html"), "of yesterday");
    SheetReport report = sheets(copy);
    report.write(written);
    assertFalse(Files.exists(written.resolve("VIT-WW.html")));
    assertTrue(Files.exists(written.resolve("MIN-WW.html")));
    assertTrue(report.withheld().contains("VIT-WW"), report.withheld().toString());
    assertTrue(report.sheets().stream().anyMatch(sheet -> sheet.code().equals("MIN-WW")));
    assertTrue(report.sheets().stream().noneMatch(sheet -> sheet.code().equals("VIT-WW")));
  }

  private static SheetReport sheets(Path folder) throws IOException {
    return Pellucid.batchSheets(folder, "", DAY, path -> new Version("1a2b3c4", true));
  }
}
