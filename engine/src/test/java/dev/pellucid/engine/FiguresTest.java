package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.figures.FiguresFindings;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/** Records of figures of the example folder: what stands in them, and that nothing else moves. */
@ResourceLock(Resources.LOCALE)
@ResourceLock(Resources.TIME_ZONE)
class FiguresTest extends FiguresOfTheExample {
  @Test
  void theRecordOfARecipeWithAWaiver() throws IOException {
    written();
    Approvals.verify(Files.readString(copy.resolve(FINISHER)));
  }

  @Test
  void freshOnesAreSilentAndAreNotWrittenAgain() throws IOException {
    FiguresReport first = written();
    assertEquals("17 records of figures written, 0 unchanged", first.tally());
    assertEquals("", said());
    assertEquals("0 records of figures written, 17 unchanged", made().tally());
    assertTrue(FindingText.of(OwnFolder.check(copy, DAY).findings()).isEmpty());
  }

  @Test
  void thoseThatTheExampleKeepsAreFresh() throws IOException {
    FiguresReport report = OwnFolder.figures(Example.whole(), "", false);
    assertEquals(2, report.unchanged(), report.tally());
    assertEquals(List.of(), report.withoutRecipe());
  }

  @Test
  void aPriceTouchesTheCostAlone() throws IOException {
    written();
    folder.with("prices/2026-11.yaml", "soybean-meal-48: 0.44", "soybean-meal-48: 0.47");
    assertEquals(List.of("cost"), List.copyOf(moved(RECORD)));
  }

  @Test
  void oneNutrientOfOneIngredientTouchesThatNutrientAlone() throws IOException {
    written();
    folder.with("ingredients/soybean-meal-48.yaml", "iodine: 0.20", "iodine: 0.60");
    assertEquals(List.of("iodine"), List.copyOf(moved(RECORD)));
  }

  @Test
  void aLimitOfAProfileTouchesItsLineAlone() throws IOException {
    written();
    folder.with("limits/catfish-grower.limits", "min 29 %", "min 30 %");
    assertEquals(List.of("digestible-protein"), List.copyOf(moved(RECORD)));
    folder.with("limits/catfish-grower.limits", "min 30 %", "min 33 %");
    assertEquals(List.of("digestible-protein", "limits"), List.copyOf(moved(RECORD)));
    assertTrue(
        lines(RECORD)
            .contains("  limits                       86 kept, 1 BROKEN: digestible-protein"));
  }

  @Test
  void layoutAndCommentsTouchNothing() throws IOException {
    written();
    folder.with(GROWER, "  maize                        14.00 %", "  # Yellow.\n  maize 14.0 %");
    assertEquals(List.of(), List.copyOf(moved(RECORD)));
    assertEquals("", said());
  }

  @Test
  void theSameBytesInAnotherZoneLocaleAndRun() throws IOException {
    List<FiguresReport.Change> here = made().changes();
    assertEquals(17, here.size());
    assertEquals(here, made().changes());
    Locale usual = Locale.getDefault();
    TimeZone usualZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(here, made().changes());
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(here, made().changes());
    } finally {
      Locale.setDefault(usual);
      TimeZone.setDefault(usualZone);
    }
    for (FiguresReport.Change one : here) {
      assertFalse(one.text().contains("\r") || one.text().contains(" \n"), one.path());
      assertTrue(one.text().endsWith("\n"), one.path());
    }
  }

  @Test
  void aBrokenLimitIsWrittenAsBroken() throws IOException {
    folder.with(GROWER, "soybean-meal-48              44.00", "soybean-meal-48              40.00");
    written();
    List<String> broken = lines(RECORD).stream().filter(line -> line.contains("BROKEN")).toList();
    assertEquals(
        List.of(
            "  limits                       86 kept, 1 BROKEN: crude-protein",
            "  crude-protein                33.59 %      min 34 % in 95 % of batches         BROKEN"
                + " by 0.41 points           CG-36"),
        broken);
    assertEquals("", said());
  }

  @Test
  void oneThatIsBrokenUnderItsWaiverSaysBoth() throws IOException {
    folder.with("carp/KF-29.recipe", "max 7 %      until", "max 5.5 %    until");
    written();
    String record = Files.readString(copy.resolve(FINISHER));
    assertTrue(record.contains(" 1 BROKEN: crude-fibre\n"), record);
    assertTrue(record.contains("BROKEN by 0.036 points, waived to 5.5 % until 2027-02-20"), record);
  }

  @Test
  void aWaiverThatIsNotNeededWaivesNothing() throws IOException {
    folder.with(
        "carp/KF-29.recipe", "crude-fibre                  max 5 %", "crude-fibre  max 6 %");
    written();
    String record = Files.readString(copy.resolve(FINISHER));
    assertTrue(record.contains("kept, waived to 7 % until 2027-02-20"), record);
    assertFalse(record.contains("1 waived"), record);
  }

  @Test
  void compareDoesNotSeeThem() throws IOException {
    Path before = Files.createDirectories(copy.resolveSibling(copy.getFileName() + "-before"));
    SlippedFolder.withRecords(before);
    written();
    String told =
        Pellucid.compare(FolderState.at(before), FolderState.at(copy), DAY, "compare.html").text();
    assertTrue(told.startsWith("no finding is new and none is gone; no feed changes"), told);
  }

  @Test
  void formatLeavesThemAlone() throws IOException {
    int files = FolderLayout.of(copy).files();
    written();
    FolderLayout layout = FolderLayout.of(copy);
    assertEquals(files, layout.files());
    assertEquals(List.of(), layout.changes());
  }

  @Test
  void oneRecipeAlone() throws IOException {
    FiguresReport report = OwnFolder.figures(copy, "CG-36", false);
    assertEquals("1 record of figures written, 0 unchanged", report.tally());
    assertEquals(RECORD, report.changes().get(0).path());
    assertEquals(
        Optional.of(
            "CG-63 is not the code of a recipe of this folder; did you mean CG-36 or CG-36I?"),
        OwnFolder.figures(copy, "CG-63", false).problem());
    Path empty = Files.createDirectories(copy.resolve("target/none"));
    assertEquals(
        Optional.of("no recipe was found to make figures of"),
        OwnFolder.figures(empty, "", false).problem());
  }

  @Test
  void onlyThoseThatAreKept() throws IOException {
    FiguresReport none = OwnFolder.figures(copy, "", true);
    assertEquals("0 records of figures written, 0 unchanged", none.tally());
    OwnFolder.figures(copy, "CG-36", false).write(copy);
    folder.with("prices/2026-11.yaml", "soybean-meal-48: 0.44", "soybean-meal-48: 0.47");
    FiguresReport one = OwnFolder.figures(copy, "", true);
    assertEquals("1 record of figures written, 0 unchanged", one.tally());
    assertEquals(RECORD, one.changes().get(0).path());
  }

  @Test
  void aRecordKeepsItsLineEndsItsByteOrderMarkAndItsPermissions() throws IOException {
    OwnFolder.figures(copy, "CG-36", false).write(copy);
    Path record = copy.resolve(RECORD);
    String kept = Files.readString(record);
    Files.writeString(record, "\uFEFF" + kept.replace("\n", "\r\n"));
    boolean posix = record.getFileSystem().supportedFileAttributeViews().contains("posix");
    if (posix) {
      Files.setPosixFilePermissions(record, PosixFilePermissions.fromString("rw-r-----"));
    }
    folder.with("prices/2026-11.yaml", "soybean-meal-48: 0.44", "soybean-meal-48: 0.47");
    OwnFolder.figures(copy, "CG-36", false).write(copy);
    String now = Files.readString(record);
    assertFalse(FiguresFindings.same(kept, now));
    assertTrue(now.startsWith("\uFEFF") && now.endsWith("\r\n"), now);
    assertFalse(now.replace("\r\n", "").contains("\n"), now);
    if (posix) {
      assertEquals(
          "rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(record)));
    }
  }

  @Test
  void aLinkIsNotWrittenThrough() throws IOException {
    Path elsewhere = Files.writeString(copy.resolve("notes.txt"), "mine");
    Files.createSymbolicLink(copy.resolve(RECORD), elsewhere);
    FiguresReport report = written();
    assertEquals(List.of("CG-36, " + RECORD + " is a link to another place"), report.unmade());
    assertEquals("mine", Files.readString(elsewhere));
  }
}
