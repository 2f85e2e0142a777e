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
  void aSheetCarriesTheLotsThatExpireFirst() throws IOException {
    String sheet = text(sheets(EXAMPLE), "CG-36");
    assertTrue(sheet.contains("Fish meal, 65\n% protein      3.0000"), sheet);
    assertTrue(sheet.contains(" FM-26-1187  ___"), sheet);
    assertTrue(sheet.contains("MIN-WW-2026-11-12-1"), "no batch of the premix\n" + sheet);
  }

  @Test
  void aLotThatDoesNotReachIsFollowedByTheNextAndWhatIsLackingIsSaid() throws IOException {
    copyExample();
    String lot = "best-before: 2027-06-30\n    quantity: ";
    rewrite("lots/2026-11.yaml", lot + "2000 kg", lot + "175 kg");
    String sheet = text(sheets(copy), "CG-36").replaceAll("\\s+", " ");
    assertTrue(sheet.contains("FM-26-1187, FM-26-1203"), sheet);
    assertTrue(sheet.contains("5 kg of lot FM-26-1187, then FM-26-1203."), sheet);
    rewrite("lots/2026-11.yaml", "inspection: passed", "inspection: failed");
    String none = text(sheets(copy), "CG-36").replaceAll("\\s+", " ");
    assertTrue(none.contains("The store lacks 9 kg of Fish meal, 65 % protein:"), none);
  }

  @Test
  void aBatchThatLotsWerePutAsideForHasASheetUnderItsNumber() throws IOException {
    SheetReport report = sheets(EXAMPLE);
    String sheet = text(report, "TG-44-2026-12-01-1");
    assertTrue(sheet.contains("Batch number                TG-44-2026-12-01-1"), sheet);
    assertTrue(sheet.contains("1000.00 kg weighed"), sheet);
    assertTrue(sheet.contains("  SB-0411  "), sheet);
  }

  @Test
  void aPlannedBatchWithAnErrorHasNoSheet() throws IOException {
    copyExample();
    rewrite("batches/TG-44-2026-12-01-1.yaml", "lot: SB-0411", "lot: SB-9999");
    SheetReport report = sheets(copy);
    assertTrue(report.withheld().contains("TG-44-2026-12-01-1"), report.withheld().toString());
    assertTrue(report.sheets().stream().anyMatch(sheet -> sheet.code().equals("TG-44")));
  }

  @Test
  void aPremixThatMustBeMendedHasNone() throws IOException {
    copyExample();
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

  private static String text(SheetReport report, String code) {
    return report.sheets().stream()
        .filter(sheet -> sheet.code().equals(code))
        .findFirst()
        .orElseThrow()
        .text();
  }

  private void rewrite(String path, String from, String to) throws IOException {
    Path file = copy.resolve(path);
    String text = Files.readString(file);
    assertTrue(text.contains(from), path + " holds no " + from);
    Files.writeString(file, text.replace(from, to));
  }

  private void copyExample() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = copy.resolve(EXAMPLE.relativize(file).toString());
        if (!to.startsWith(copy.resolve("target"))) {
          Files.createDirectories(to.getParent());
          Files.copy(file, to);
        }
      }
    }
  }

  private static SheetReport sheets(Path folder) throws IOException {
    return Pellucid.batchSheets(folder, "", DAY, path -> new Version("1a2b3c4", true));
  }
}
