package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.goal.Sheet;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets of a whole folder, premixes with them. */
class SheetRunTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();

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
    assertTrue(
        sheet.replaceAll("\\s+", " ").contains("9.00 kg 0.04 kg Bench scale FM-26-1187"), sheet);
    assertTrue(sheet.contains("MIN-WW-2026-11-12-1"), "no batch of the premix\n" + sheet);
  }

  /** The same recipe on the scales, in the mixer and in the coater of each plant. */
  @Test
  void twoPlantsMakeTwoSheetsOfOneRecipe() throws IOException {
    copyExample();
    String shed = text(sheets(copy), "CG-36");
    rewrite("catfish/CG-36.recipe", "plant     farm-shed", "plant     river-mill");
    String mill = text(sheets(copy), "CG-36");
    assertTrue(mill.contains("Bowl blender, 52 % full") && mill.contains("3, all of them equal"));
    assertTrue(shed.contains("Paddle mixer,") && shed.contains("Bench scale"), shed);
    assertFalse(shed.contains("Bowl blender"));
    assertTrue(shed.contains("34 trays of 2 kg wet feed, at most 17 in a round. 2 rounds"), shed);
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
    assertTrue(sheet.contains("Size                        1000 kg"), sheet);
    assertTrue(sheet.contains("  SB-0411  "), sheet);
    String words = sheet.replaceAll("\\s+", " ");
    assertTrue(words.contains("Made before this one CF-31-2026-11-18-1"), sheet);
    assertTrue(words.contains("Flushed with, kept as 5 kg Wheat middlings, into the next"), sheet);
  }

  /** Pages of two batches of one day must not be mixed up, nor their bags. */
  @Test
  void eachPageAndTheLabelOfAPlannedBatchNameItsNumber() throws IOException {
    SheetReport report = sheets(EXAMPLE);
    Sheet sheet = sheet(report, PLANNED);
    assertTrue(sheet.html().contains("\"" + PLANNED + ", commit 1a2b3c4, clean\""));
    assertTrue(sheet.label().orElseThrow().text().contains(PLANNED));
    assertFalse(sheet(report, "TG-44").label().orElseThrow().text().contains("TG-44-"));
  }

  /** 1000 kg of TG-44: 9.5 % wheat gluten, 16 % fish meal, 0.5 % VIT-TR. */
  @Test
  void whatPlannedBatchesLackIsToBeBought() throws IOException {
    copyExample();
    String all = list();
    // Four packs of 25 kg at 1.75 EUR/kg, of which 5 kg are left over; five days before the batch.
    assertTrue(
        all.contains("Wheat gluten, vital 2026-11-26 2026-12-01 4 of 25 kg at 43.75 5.000 175.00"),
        all);
    // Nobody says how it is sold.
    assertTrue(
        all.contains("Blood meal, spray-dried, pig and poultry 2026-12-01 40.000 kg at 1.15 46.00"),
        all);
    assertTrue(
        all.contains(
            "Too late: Soy protein concentrate was to be ordered by 2026-11-24. Ordered today it comes"
                + " on 2026-12-02, and TG-44-2026-12-01-1 lacks it on 2026-12-01"),
        all);
    assertTrue(all.contains("Vitamin premix, trout (VIT-TR) 2026-12-01 5.000 no"), all);
    assertTrue(all.contains("Fish meal, 65 % protein 2026-12-01 160.000 160.000 "), all);
    rewrite("lots/2026-11.yaml", "quantity: 2000 kg", "quantity: 100 kg");
    String some = list();
    // Of the lot that is named 90 kg are left, and no other counts for a line that names its lot.
    assertTrue(some.contains("protein 2026-12-01 160.000 90.000 70.000"), some);
    rewrite("batches/TG-44-2026-12-01-1.yaml", "  - {line: fish-meal-65, lot: FM-26-1187}\n", "");
    assertTrue(!list().contains("160.000 90.000"), "two lots hold 190 kg of the 160");
  }

  @Test
  void aPremixThatIsPlannedIsNotToBeMadeAgainAndAsksForItsParts() throws IOException {
    copyExample();
    Files.writeString(copy.resolve("batches/VIT-TR-2026-11-30-1.yaml"), "size: 25 kg\n");
    String list = list();
    assertTrue(!list.contains("(VIT-TR)"), list);
    // 14 mg/kg of feed at a dose of 5 g/kg from a source of 80 %: 0.35 % of 25 kg, up to the gram.
    assertTrue(list.contains("Riboflavin, 80 % 2026-11-30 0.088"), list);
  }

  @Test
  void withoutPlannedBatchesThereIsNoPurchaseList() throws IOException {
    copyExample();
    Path written = Files.createDirectories(copy.resolve("target"));
    sheets(copy).write(written);
    assertTrue(Files.exists(written.resolve("purchase-list.html")));
    Files.delete(copy.resolve("batches/TG-44-2026-12-01-1.yaml"));
    sheets(copy).write(written);
    assertFalse(Files.exists(written.resolve("purchase-list.html")));
    assertFalse(Files.exists(written.resolve("purchase-list.txt")));
  }

  @Test
  void aPlannedBatchMayTellNoMoreThanItsSize() throws IOException {
    copyExample();
    Files.writeString(copy.resolve("batches/CG-36-2026-12-02-1.yaml"), "size: 120 kg\n");
    SheetReport report = sheets(copy);
    assertTrue(text(report, "CG-36-2026-12-02-1").contains("Size                        120 kg"));
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
  void aPremixThatMustBeMendedLosesItsOlderOneAndNoFileOfAnother() throws IOException {
    copyExample();
    Path premix = copy.resolve("premixes/VIT-WW.premix");
    String text = Files.readString(premix);
    Path written = Files.createDirectories(copy.resolve("target"));
    sheets(copy).write(written);
    assertTrue(Files.exists(written.resolve("VIT-WW.html")));
    Files.writeString(written.resolve("VIT-WW.txt"), "VIT-WW is on order\n");
    Files.writeString(premix, text.replace("  vitamin-c ", "  vitamin-zzz "));
    SheetReport report = sheets(copy);
    assertEquals(
        List.of(
            "left alone, not a file that this goal wrote: "
                + written.toAbsolutePath().resolve("VIT-WW.txt")),
        report.write(written));
    assertFalse(Files.exists(written.resolve("VIT-WW.html")));
    assertEquals("VIT-WW is on order\n", Files.readString(written.resolve("VIT-WW.txt")));
    assertTrue(Files.exists(written.resolve("MIN-WW.html")));
    assertTrue(report.withheld().contains("VIT-WW"), report.withheld().toString());
    assertTrue(report.sheets().stream().anyMatch(sheet -> sheet.code().equals("MIN-WW")));
    assertTrue(report.sheets().stream().noneMatch(sheet -> sheet.code().equals("VIT-WW")));
  }

  private static final String PLANNED = "TG-44-2026-12-01-1";
  private static final String RECORD = "batches/" + PLANNED + ".yaml";

  /** Sheet, label and the folder that they are in, from a run in which all was well. */
  private Path sheetsOfBefore() throws IOException {
    copyExample();
    Path written = Files.createDirectories(copy.resolve("target"));
    assertEquals(List.of(), sheets(copy).write(written));
    assertEquals(4, ofPlanned(written).size(), "no sheet and label to take away");
    return written;
  }

  private static List<String> ofPlanned(Path written) throws IOException {
    try (Stream<Path> files = Files.list(written)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith(PLANNED))
          .sorted()
          .toList();
    }
  }

  private static List<String> tookAway(String why) {
    return List.of("took away the older sheet of " + PLANNED + ": " + why);
  }

  @Test
  void anOlderSheetOfABatchWhoseLotIsStoppedGoes() throws IOException {
    Path written = sheetsOfBefore();
    rewrite("lots/2026-11.yaml", "inspection: passed", "inspection: failed");
    SheetReport report = sheets(copy);
    assertEquals(List.of(), report.write(written));
    assertEquals(List.of(PLANNED), report.withheld());
    assertEquals(List.of(), ofPlanned(written));
    assertTrue(Files.exists(written.resolve("TG-44.html")));
  }

  @Test
  void anOlderSheetOfABatchWhoseRecordIsGoneOrUnreadableGoes() throws IOException {
    Path written = sheetsOfBefore();
    String record = Files.readString(copy.resolve(RECORD));
    Files.writeString(copy.resolve(RECORD), "size: [\n");
    assertEquals(tookAway("its record cannot be read"), sheets(copy).write(written));
    assertEquals(List.of(), ofPlanned(written));
    Files.writeString(copy.resolve(RECORD), record);
    sheets(copy).write(written);
    assertEquals(4, ofPlanned(written).size());
    Files.delete(copy.resolve(RECORD));
    assertEquals(tookAway("no record of a batch has this number"), sheets(copy).write(written));
    assertEquals(List.of(), ofPlanned(written));
    assertEquals(List.of(), sheets(copy).write(written), "told once");
  }

  @Test
  void anOlderSheetOfABatchThatWasMadeOrClosedGoes() throws IOException {
    Path written = sheetsOfBefore();
    String record = Files.readString(copy.resolve(RECORD));
    rewrite(RECORD, "lot: SB-0411}", "lot: SB-0411, weight: 90 kg}");
    assertEquals(tookAway("it was made"), sheets(copy).write(written));
    assertEquals(List.of(), ofPlanned(written));
    Files.writeString(copy.resolve(RECORD), record);
    sheets(copy).write(written);
    Files.writeString(copy.resolve(RECORD), record + "closed: yes\n");
    assertEquals(tookAway("its record says that it is closed"), sheets(copy).write(written));
    assertEquals(List.of(), ofPlanned(written));
  }

  @Test
  void anOlderSheetOfABatchGoesWithItsRecipe() throws IOException {
    Path written = sheetsOfBefore();
    Files.delete(copy.resolve("trout/TG-44.recipe"));
    SheetReport report = sheets(copy);
    report.write(written);
    assertTrue(report.withheld().contains(PLANNED), report.withheld().toString());
    assertEquals(List.of(), ofPlanned(written));
  }

  /** A sheet alone as HTML, of a version of the tool that called it by the code of the recipe. */
  @Test
  void anOlderPageOfABatchGoesWithoutItsText() throws IOException {
    Path written = sheetsOfBefore();
    Files.delete(written.resolve(PLANNED + ".txt"));
    Path page = written.resolve(PLANNED + ".html");
    String html = Files.readString(page);
    assertTrue(html.contains("<title>Batch sheet " + PLANNED + "</title>"));
    Files.writeString(page, html.replace("sheet " + PLANNED + "</title>", "sheet TG-44</title>"));
    Files.delete(copy.resolve(RECORD));
    sheets(copy).write(written);
    assertEquals(List.of(), ofPlanned(written));
  }

  @Test
  void aPersonsOwnFileAndTheSheetsOfAnotherMillStay() throws IOException {
    Path written = sheetsOfBefore();
    Files.writeString(written.resolve("TG-44-2026-11-02-1.txt"), "ask the store about it\n");
    Files.writeString(written.resolve("TG-44-2026-11-02-1.html"), "<p>ask the store about it\n");
    Files.writeString(written.resolve("TG-44-2026-11-02-1.pdf"), "scan\n");
    String other = Files.readString(written.resolve(PLANNED + ".txt"));
    Files.writeString(
        written.resolve("TG-44-2026-12-02-1.txt"),
        other
            .replace(PLANNED, "TG-44-2026-12-02-1")
            .replaceAll("(Mill or farm +).*", "$1Another Mill"));
    assertEquals(List.of(), sheets(copy).write(written));
    assertEquals(4, ofPlanned(written).size());
    for (String name :
        List.of(
            "TG-44-2026-11-02-1.txt",
            "TG-44-2026-11-02-1.html",
            "TG-44-2026-11-02-1.pdf",
            "TG-44-2026-12-02-1.txt")) {
      assertTrue(Files.exists(written.resolve(name)), name);
    }
    Files.writeString(written.resolve(PLANNED + ".txt"), "ask the store about it\n");
    rewrite(RECORD, "lot: SB-0411", "lot: SB-9999");
    assertEquals(
        List.of(
            "left alone, not a file that this goal wrote: "
                + written.toAbsolutePath().resolve(PLANNED + ".txt")),
        sheets(copy).write(written));
    assertEquals(List.of(PLANNED + ".txt"), ofPlanned(written));
  }

  private String list() throws IOException {
    return sheets(copy).purchases().orElseThrow().text().replaceAll("\\s+", " ");
  }

  private static String text(SheetReport report, String code) {
    return sheet(report, code).text();
  }

  private static Sheet sheet(SheetReport report, String code) {
    return report.sheets().stream()
        .filter(sheet -> sheet.code().equals(code))
        .findFirst()
        .orElseThrow();
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

  /** A file that a sheet does not hang on may be changed: the sheet is of the commit still. */
  @Test
  void aSheetIsADraftWhereWhatItHangsOnIsNotCommitted() throws IOException {
    copyExample();
    List<String> none = drafts();
    List<String> all = drafts("practice/retention.yaml");
    assertEquals(all, drafts("nutrients/1-whole.yaml"));
    assertEquals(all, drafts("lots/2026-11.yaml"));
    assertEquals(none, drafts("ingredients/not-in-any-feed.yaml"));
    assertEquals(none, drafts("README.yaml"));
    assertTrue(all.size() > none.size() + 10, all.toString());

    List<String> own = drafts("catfish/CG-36.recipe");
    assertTrue(own.contains("CG-36") && !own.contains("TG-44"), own.toString());
    // Its premixes are made for what the approved recipes weigh out.
    assertTrue(own.contains("VIT-WW"), own.toString());

    List<String> premix = drafts("premixes/VIT-WW.premix");
    assertTrue(premix.contains("VIT-WW") && premix.contains("CG-36"), premix.toString());
  }

  /** Law holds for feeds that do not name it, so one that is gone is missed by nobody. */
  @Test
  void lawThatIsGoneOrUnreadableMakesEverySheetADraft() throws IOException {
    copyExample();
    List<String> all = drafts("practice/retention.yaml");
    assertEquals(all, drafts("law/gone.limits"));
    String law = lawFile();
    assertEquals(all, drafts(law));
    rewrite(law, "  kind ", "  kindd ");
    assertEquals(all, drafts(law));
    assertTrue(drafts("limits/" + profile()).size() < all.size());
  }

  private String lawFile() throws IOException {
    try (Stream<Path> files = Files.list(copy.resolve("law"))) {
      return "law/" + files.map(file -> file.getFileName().toString()).sorted().findFirst().get();
    }
  }

  private String profile() throws IOException {
    try (Stream<Path> files = Files.list(copy.resolve("limits"))) {
      return files.map(file -> file.getFileName().toString()).sorted().findFirst().get();
    }
  }

  /** Filling in a record is daily work, and keeps nobody else from working. */
  @Test
  void aRecordStampsNoSheetButThatOfItsOwnBatchAndOfTheNext() throws IOException {
    copyExample();
    List<String> none = drafts();
    assertEquals(none, drafts("batches/MIN-WW-2026-11-12-1.yaml"));
    List<String> own = new ArrayList<>(none);
    own.add("TG-44-2026-12-01-1");
    assertEquals(own, drafts("batches/TG-44-2026-12-01-1.yaml"));
    assertEquals(own, drafts("batches/CF-31-2026-11-18-1.yaml"));
    assertFalse(drafts("trout/TG-44.recipe").contains("CG-36"));
    assertTrue(drafts("catfish/CF-31.recipe").contains("TG-44-2026-12-01-1"));
  }

  @Test
  void withoutAnyWordOfTheCommitEverySheetIsADraft() throws IOException {
    SheetReport report = OwnFolder.batchSheets(EXAMPLE, DAY, Version.UNKNOWN);
    assertEquals(report.sheets().stream().map(Sheet::code).toList(), report.drafts());
  }

  private List<String> drafts(String... uncommitted) throws IOException {
    Version version =
        new Version("1a2b3c4", Optional.of(new TreeSet<>(Arrays.asList(uncommitted))));
    return OwnFolder.batchSheets(copy, DAY, version).drafts();
  }

  private static SheetReport sheets(Path folder) throws IOException {
    return OwnFolder.batchSheets(folder, DAY, Version.committed("1a2b3c4"));
  }
}
