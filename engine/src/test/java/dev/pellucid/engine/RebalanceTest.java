package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.RebalanceReport;
import dev.pellucid.engine.goal.Sheet;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.engine.rebalance.Rebalancing;
import dev.pellucid.engine.rebalance.Rebalancing.LineMove;
import dev.pellucid.engine.rebalance.Rebalancing.Standing;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One batch of the example re-balanced to its lots: what is offered, written, refused and said. */
class RebalanceTest {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 2);
  private static final String NUMBER = "CG-36-2026-12-03-1";
  private static final String RECORD = "batches/" + NUMBER + ".yaml";
  private static final String LOTS = "lots/2026-11.yaml";
  private static final String SOY = "        moisture: 11.2 %";
  private static final String POOR = SOY + "\n        crude-protein: 43.4 %";

  @TempDir Path copy;
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
    planned("");
  }

  private void planned(String more) throws IOException {
    Files.writeString(
        copy.resolve(RECORD),
        """
        # Planned.
        size: 60 kg  # one load

        weighed:
          - {line: fish-meal-65, lot: FM-26-1187}
          - {line: soybean-meal-48, lot: SB-0411}
        # The rest of the store.
        """
            + more);
  }

  @Test
  void whatKeepsItsLimitsStaysAsItIs() throws IOException {
    RebalanceReport report = asked();
    assertEquals(Standing.KEPT, told(report).standing(), report.text());
    assertTrue(report.text().startsWith(NUMBER + " keeps every limit with its lots."));
    assertEquals(List.of(), report.apply(copy));
    assertEquals(List.of(), report.next(false));
  }

  @Test
  void aPoorLotMovesTheFewestPointsAndIsKeptByCheck() throws IOException {
    folder.with(LOTS, SOY, POOR);
    assertTrue(ofRecord().stream().anyMatch(it -> it.code().text().equals("made-outside-limits")));
    String before = Files.readString(copy.resolve(RECORD));
    RebalanceReport report = asked();
    Rebalancing told = told(report);
    assertEquals(Standing.MOVED, told.standing(), report.text());
    assertEquals(before, Files.readString(copy.resolve(RECORD)), "it writes nothing by itself");
    assertTrue(told.points() > 0.2 && told.points() < 3, report.text());
    assertTrue(report.text().contains("  by: ____\n"), report.text());
    assertTrue(
        report.text().contains("SB-0411 in place of soybean-meal-48 as the folder has it takes"),
        report.text());
    assertTrue(report.next(false).get(0).contains("-Dpellucid.write=true"));
    assertEquals(List.of(RECORD), report.apply(copy));
    assertEquals(
        List.of("rebalanced-not-decided"),
        ofRecord().stream().map(it -> it.code().text()).toList(),
        folder.text());
    assertEquals(Severity.NOTE, ofRecord().get(0).severity());
    assertEquals(Standing.KEPT, told(asked()).standing(), asked().text());
  }

  @Test
  void whatIsWrittenKeepsAllElseOfTheRecord() throws IOException {
    folder.with(LOTS, SOY, POOR);
    planned("\nflushed: {quantity: 5 kg, with: maize, to: \"the pigs # of the farm\"}\n");
    Path file = copy.resolve(RECORD);
    String windows = "\uFEFF" + Files.readString(file).replace("\n", "\r\n");
    Files.writeString(file, windows);
    RebalanceReport report = asked();
    report.apply(copy);
    String written = Files.readString(file, StandardCharsets.UTF_8);
    assertTrue(
        written.startsWith("\uFEFF# Planned.\r\nsize: 60 kg  # one load\r\n\r\nrebalanced:"));
    assertFalse(written.replace("\r\n", "").contains("\n"), written);
    List<String> left = written.lines().toList();
    windows.lines().forEach(line -> assertTrue(left.contains(line), line));
  }

  @Test
  void aBlockThatStandsThereIsReplaced() throws IOException {
    folder.with(LOTS, SOY, POOR);
    asked().apply(copy);
    String first = Files.readString(copy.resolve(RECORD));
    folder.with(LOTS, "crude-protein: 43.4 %", "crude-protein: 42.6 %");
    RebalanceReport report = asked();
    assertEquals(Standing.MOVED, told(report).standing(), report.text());
    report.apply(copy);
    String second = Files.readString(copy.resolve(RECORD));
    assertEquals(first.lines().count(), second.lines().count(), second);
    assertFalse(first.equals(second));
    folder.with(LOTS, "crude-protein: 42.6 %", "crude-protein: 48.5 %");
    folder.with(RECORD, "soybean-meal-48, share: ", "soybean-meal-48, share: 41.00 %} #");
    RebalanceReport remark = asked();
    assertEquals(List.of(), remark.apply(copy), "a remark in the block is not lost");
  }

  @Test
  void theSheetSaysWhatIsOtherAndIsADraftUntilSomebodyAnswers() throws IOException {
    folder.with(LOTS, SOY, POOR);
    asked().apply(copy);
    Sheet draft = sheet();
    assertTrue(draft.text().contains("nobody has signed for them"), draft.text());
    assertTrue(draft.draft());
    folder.with(RECORD, "by: ____", "by: quality manager");
    Sheet sheet = sheet();
    String words = sheet.text().replaceAll("\\s+", " ");
    assertFalse(sheet.draft(), words);
    assertTrue(sheet.html().contains("<span class=\"name\">FM-26-1187,</span>"), sheet.html());
    assertTrue(words.contains("re-balanced for lots FM-26-1187, SB-0411, MZ-114"), sheet.text());
    assertTrue(words.contains("Answers for them quality manager"), words);
    assertTrue(words.contains("Signed before weighing, name ____"), words);
    for (LineMove one : told(asked()).lines()) {
      assertTrue(
          words.contains("(recipe " + String.format(Locale.ROOT, "%.2f", one.recipe())), words);
    }
    assertTrue(words.contains("Fish meal, 65 % protein 15.00 % 15."), words);
  }

  @Test
  void twoLotsForOneLineCountByHalves() throws IOException {
    folder.with(LOTS, SOY, POOR);
    folder.with(
        LOTS,
        "  - number: MZ-114",
        """
          - number: SB-0500
            ingredient: soybean-meal-48
            received: 2026-11-10
            best-before: 2027-05-30
            quantity: 2000 kg
            inspection: passed
            contents:
              - source: scenario
                crude-protein: 42.9 %
          - number: MZ-114"""
            .indent(2));
    String two = "  - {line: soybean-meal-48, lot: SB-0411}";
    folder.with(RECORD, two, two + "\n" + two.replace("0411", "0500"));
    RebalanceReport report = asked();
    assertEquals(Standing.MOVED, told(report).standing(), report.text());
    assertTrue(report.text().contains("SB-0411 and SB-0500 in place of"), report.text());
    report.apply(copy);
    assertTrue(ofRecord().stream().noneMatch(it -> it.severity() != Severity.NOTE), folder.text());
    String words = sheet().text().replaceAll("\\s+", " ");
    assertTrue(words.contains("SB-0411") && words.contains("SB-0500"), words);
  }

  @Test
  void whatNothingKeepsIsSaidWithWhatStandsAgainstIt() throws IOException {
    folder.with(LOTS, SOY, SOY + "\n        crude-protein: 33.4 %");
    RebalanceReport report = asked();
    assertEquals(Standing.IMPOSSIBLE, told(report).standing(), report.text());
    assertTrue(report.text().contains("Another lot is needed."), report.text());
    assertTrue(told(report).against().size() > 1, report.text());
    assertEquals(List.of(), report.apply(copy));
    assertTrue(report.isStuck());
  }

  @Test
  void withoutAMeasuredLotThereIsNoGround() throws IOException {
    Files.delete(copy.resolve(RECORD));
    String bare = "batches/CF-33-2026-12-03-1.yaml";
    String code = Files.exists(copy.resolve("carp/CF-33.recipe")) ? "CF-33" : "CG-36";
    Files.writeString(copy.resolve(bare.replace("CF-33", code)), "size: 60 kg\n");
    folder
        .with(
            LOTS,
            "        moisture: 8.6 %\n        crude-protein: 64.2 %\n        crude-ash: 16.8 %\n",
            "")
        .with(
            LOTS,
            "    contents:\n      - source: scenario\n  - number: FM-26-1203",
            "  - number: FM-26-1203")
        .with(LOTS, "    contents:\n      - source: scenario\n        moisture: 11.2 %\n", "")
        .with(LOTS, "    contents:\n      - source: scenario\n        moisture: 12.1 %\n", "");
    RebalanceReport report = OwnFolder.rebalance(copy, DAY, code + "-2026-12-03-1");
    assertEquals(Standing.NO_GROUND, told(report).standing(), report.text());
  }

  @Test
  void aLineWithoutWithinMovesOnlyWhenItIsNamed() throws IOException {
    folder.with(LOTS, SOY, POOR);
    for (String without : List.of("10 to 20 %", "30 to 48 %", "10 to 25 %")) {
      folder.with("catfish/CG-36.recipe", "within " + without, "");
    }
    RebalanceReport report = asked();
    assertEquals(Standing.IMPOSSIBLE, told(report).standing(), report.text());
    RebalanceReport freed =
        OwnFolder.rebalance(copy, DAY, NUMBER, "fish-meal-65, soybean-meal-48, maize");
    assertEquals(Standing.MOVED, told(freed).standing(), freed.text());
    assertTrue(freed.text().contains(" tells no within, and moves because"));
    freed.apply(copy);
    assertEquals(List.of("rebalanced-not-decided"), codes(), folder.text());
    String slip = OwnFolder.rebalance(copy, DAY, NUMBER, "fish-meel").problem().orElse("");
    assertTrue(slip.contains("did you mean"), slip);
    String none = OwnFolder.rebalance(copy, DAY, NUMBER, "krill-meal").problem().orElse("");
    assertTrue(none.startsWith("krill-meal is no line of CG-36"), none);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | say which batch with -Dpellucid.batch=NUMBER; planned are CG-36-2026-12-03-1, TG-44",
        "CG-36-2026-12-03-2 | is not the number of a batch of this folder; did you mean CG-36-2026",
        "CF-31-2026-11-18-1 | CF-31-2026-11-18-1 is made, and what was weighed cannot be given",
        "MIN-WW-2026-11-12-1 | is made, and what was weighed",
      })
  void aSlipInTheNumberIsOneSentence(String number, String said) throws IOException {
    RebalanceReport report = OwnFolder.rebalance(copy, DAY, number);
    assertTrue(report.problem().orElse("").contains(said), report.problem().orElse(""));
    assertEquals(List.of(), report.apply(copy));
  }

  @Test
  void whatIsPlannedOfAPremixOrForAPastDayIsRefused() throws IOException {
    Files.writeString(copy.resolve("batches/VIT-WW-2026-12-03-1.yaml"), "size: 5 kg\n");
    assertTrue(
        OwnFolder.rebalance(copy, DAY, "VIT-WW-2026-12-03-1")
            .problem()
            .orElse("")
            .contains("VIT-WW is a premix, and premixes are made as their file says"));
    assertTrue(
        OwnFolder.rebalance(copy, DAY.plusDays(9), NUMBER)
            .problem()
            .orElse("")
            .contains("name the file by the day on which it will be made"));
  }

  @Test
  void aSlipInTheRecordIsToldFirst() throws IOException {
    folder.with(LOTS, SOY, POOR).with(RECORD, "line: fish-meal-65", "line: fish-meal-56");
    String problem = asked().problem().orElse("");
    assertTrue(problem.startsWith("check must be clean of this first: " + RECORD), problem);
    assertTrue(problem.contains("did you mean fish-meal-65?"), problem);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{line: soybean-mael-48, share: 45.00 %} | off-recipe | did you mean soybean-meal-48?",
        "{line: VIT-WW, share: 0.60 %} | off-recipe | take VIT-WW out of the shares of this batch",
        "{line: soybean-meal-48, share: 48.50 %} | off-recipe | stay within it, take other lots",
        "{line: soybean-meal-48, share: 4.50 %} | off-recipe | did you mean 45 %?",
        "{line: salt, share: 0.90 %} | off-recipe | stay within it, take other lots",
        "{line: wheat-middlings, share: 22.18 %} | total-off | is the rest: leave it out, or write",
        "{line: fish-meal-65, share: 19.00 %}, {line: soybean-meal-48, share: 47.00 %}, {line:"
            + " maize, share: 20.00 %} | total-off | move other lines so that the rest stays",
        "{line: maize, share: 14.50 %}, {line: maize, share: 14.00 %} | off-recipe | keep one of",
      })
  void aSlipInASharesIsOneFinding(String shares, String code, String help) throws IOException {
    rebalanced("2026-12-02", "shift lead", shares);
    List<Finding> found = ofRecord();
    assertEquals(1, found.size(), folder.text());
    assertEquals("rebalanced-" + code, found.get(0).code().text());
    assertEquals(Severity.ERROR, found.get(0).severity());
    assertTrue(found.get(0).helps().toString().contains(help), found.get(0).helps().toString());
    assertTrue(
        OwnFolder.batchSheets(copy, DAY, Version.committed("0123abcd"))
            .withheld()
            .contains(NUMBER));
  }

  private void rebalanced(String day, String by, String shares) throws IOException {
    planned("rebalanced: {day: " + day + ", by: " + by + ", shares: [" + shares + "]}\n");
  }

  @Test
  void sharesOfItsOwnNeedLotsThatWereMeasured() throws IOException {
    rebalanced("2026-12-02", "shift lead", "{line: maize, share: 14.50 %}");
    assertEquals(List.of(), ofRecord(), folder.text());
    folder
        .with(RECORD, "  - {line: fish-meal-65, lot: FM-26-1187}\n", "")
        .with(
            RECORD,
            "  - {line: soybean-meal-48, lot: SB-0411}",
            "  - {line: wheat-middlings, lot: WM-77}");
    assertEquals(List.of("rebalanced-without-lots"), codes(), folder.text());
  }

  @Test
  void aBatchThatIsMadeIsHeldAgainstItsOwnShares() throws IOException {
    String made =
        """
        size: 100 kg
        rebalanced:
          day: 2026-11-17
          by: quality manager
          shares:
            - {line: soybean-meal-48, share: 29.00 %}
        """;
    String record = "batches/CF-31-2026-11-18-1.yaml";
    folder.with(record, "size: 100 kg\n", made);
    String said = folder.text();
    assertTrue(said.contains("soybean-meal-48 was weighed as 28.000 kg, 29.000 kg were"), said);
    folder.with(record, "weight: 28.00 kg", "weight: 29.00 kg").with(record, "15.27", "14.27");
    assertFalse(folder.text().contains("was weighed as"), folder.text());
    folder.with(record, "day: 2026-11-17", "day: 2026-11-21");
    assertTrue(folder.codes().contains("rebalanced-not-decided"), folder.text());
    folder
        .with(record, "day: 2026-11-21", "day: 2026-11-17")
        .with(record, "by: quality manager", "by: ____");
    assertTrue(
        folder.text().contains("error: this batch was made by shares of its own that nobody"),
        folder.text());
  }

  @Test
  void aPremixIsNotRebalanced() throws IOException {
    String record = "batches/MIN-WW-2026-11-12-1.yaml";
    folder.with(
        record,
        "size: 5 kg\n",
        "size: 5 kg\nrebalanced: {day: 2026-11-11, by: store, shares: [{line: limestone, share: 80 %}]}\n");
    assertTrue(
        folder.text().contains("MIN-WW is a premix, and premixes are made as"), folder.text());
  }

  /** 60 kg with 43 % in place of the 44 % of the recipe. */
  @Test
  void aRecallReckonsWithTheSharesOfTheBatchAsItsSheetDoes() throws IOException {
    rebalanced("2026-12-02", "shift lead", "{line: soybean-meal-48, share: 43.00 %}");
    String sheet = sheet().text().replaceAll("\\s+", " ");
    assertTrue(
        sheet.contains("weigh all, tip in half 25.8 kg 0.1 kg Platform scale SB-0411"), sheet);
    String recall =
        OwnFolder.recall(copy, PrintedPaths.BELOW_FOLDER, DAY, "SB-0411", "")
            .text()
            .replaceAll("\\s+", " ");
    assertTrue(recall.contains("CG-36-2026-12-03-1 of 2026-12-03 would hold 25.8 kg"), recall);
    folder.with(RECORD, "share: 43.00 %", "share: 4.30 %");
    String recipe =
        OwnFolder.recall(copy, PrintedPaths.BELOW_FOLDER, DAY, "SB-0411", "")
            .text()
            .replaceAll("\\s+", " ");
    assertTrue(
        recipe.contains("CG-36-2026-12-03-1 of 2026-12-03 would hold 26.4 kg"),
        "shares that cannot be taken are no ground: " + recipe);
  }

  private RebalanceReport asked() throws IOException {
    RebalanceReport report = OwnFolder.rebalance(copy, DAY, NUMBER);
    return report;
  }

  private static Rebalancing told(RebalanceReport report) {
    return report.told().orElseThrow(() -> new AssertionError(report.problem()));
  }

  private List<Finding> ofRecord() throws IOException {
    return folder.findings().stream().filter(it -> it.span().file().path().equals(RECORD)).toList();
  }

  private List<String> codes() throws IOException {
    return ofRecord().stream().map(it -> it.code().text()).toList();
  }

  private Sheet sheet() throws IOException {
    return OwnFolder.batchSheets(copy, DAY, Version.committed("0123abcd")).sheets().stream()
        .filter(one -> one.code().equals(NUMBER))
        .findFirst()
        .orElseThrow();
  }
}
