package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records and lots of the example folder: silence, and what single slips in them give. */
class MadeFolderTest {
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String MIN = "batches/MIN-WW-2026-11-12-1.yaml";
  private static final String TG = "batches/TG-44-2026-12-01-1.yaml";
  private static final String LOTS = "lots/2026-11.yaml";
  private static final Path EXAMPLE = Example.whole();

  @TempDir Path copy = Path.of("");

  private static final String DELIVERED =
      """
      delivered:
        - {day: 2026-11-20, by: store, to: Withybeck Fish Farm, bags: 2, note: DN-114}
        - {day: 2026-11-23, by: store, to: Reedmere Ponds, bags: 1, note: DN-117}
      """;

  @Test
  void theTallySaysHowManyRecordsWereHeldAgainstTheirRecipes() throws IOException {
    CheckReport report = OwnFolder.check(EXAMPLE, LocalDate.of(2026, 11, 25));
    assertEquals(3, report.batches());
    assertTrue(report.tally().startsWith("17 recipes, 3 batch records and "), report.tally());
  }

  @Test
  @DisplayName(
      "too much selenite in a premix batch breaks the legal maximum of the feed it went into")
  void aPremixBatchCountsInTheFeed() throws IOException {
    SlippedFolder slipped = folder().with(MIN, "weight: 12.5 g", "weight: 200.0 g");
    assertTrue(slipped.codes().contains("weight-off-target"), slipped.text());
    Finding limit =
        slipped.findings().stream()
            .filter(it -> it.code().text().equals("made-outside-limits"))
            .filter(it -> it.about().subject().equals("selenium"))
            .findFirst()
            .orElseThrow(() -> new AssertionError(texts(slipped)));
    assertTrue(limit.headline().startsWith("as made, selenium is "), limit.headline());
    assertEquals("CF-31-2026-11-18-1", limit.about().path().get(0));
    assertTrue(limit.about().path().contains("selenite-1"), limit.about().path().toString());
  }

  @Test
  void aLotOfAnotherGradeIsToldAtItsFigure() throws IOException {
    String remark = "remark: seal whole, locked away";
    String measured = remark + "\n    contents:\n      - source: scenario\n        selenium: 4.5 %";
    SlippedFolder slipped = folder().with(LOTS, remark, measured);
    assertTrue(
        slipped
            .text()
            .contains(
                "warning: lot SE1-9042 holds 4.5 % of selenium, selenite-1 is sold for its 1.0 %"),
        slipped.text());
  }

  @Test
  void aPoorLotBreaksAMinimumBeforeTheBatchIsMade() throws IOException {
    SlippedFolder slipped = folder().with(LOTS, "crude-protein: 64.2 %", "crude-protein: 44.2 %");
    assertTrue(slipped.codes().contains("lot-unlike-library"), slipped.text());
    assertTrue(
        slipped
            .text()
            .contains(
                "batches/TG-44-2026-12-01-1.yaml:2:7: error: with these lots, crude-protein is"
                    + " 39.7"),
        slipped.text());
    assertTrue(slipped.text().contains("lot FM-26-1187: contents times 0.9935 for its moisture"));
    assertTrue(slipped.text().contains("help: take other lots, or change the recipe for these"));
    assertTrue(
        slipped
            .text()
            .contains("help: mvn pellucid:rebalance -Dpellucid.batch=TG-44-2026-12-01-1 finds"),
        slipped.text());
  }

  @Test
  void heldIsAWarningAndRejectedIsSilent() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(CF, "weight: 28.00 kg", "weight: 8.00 kg")
            .with(CF, "decision: released", "decision: held")
            .with(CF, DELIVERED, "");
    assertEquals(0, errors(slipped), slipped.text());
    assertTrue(slipped.text().contains("note: with it, as made, crude-protein is"), slipped.text());
    slipped.with(CF, "decision: held", "decision: rejected");
    assertFalse(slipped.text().contains("as made,"), slipped.text());
    assertTrue(slipped.codes().contains("weight-off-target"));
  }

  @Test
  void aClosedRecordIsKeptForTheTraceOnly() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(CF, "weight: 28.00 kg", "weight: 8.00 kg")
            .with(CF, "water:", "closed: yes\nwater:");
    assertEquals(List.of(), slipped.codes(), slipped.text());
    assertTrue(
        OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "")
            .text()
            .contains("2026-11-18  released, closed"));
  }

  @Test
  void whatIsPlannedCountsToo() throws IOException {
    SlippedFolder slipped = folder().with(LOTS, "quantity: 800 kg", "quantity: 70 kg");
    List<Finding> found = slipped.findings();
    assertEquals(
        List.of("pack-above-deliveries", "lot-quantity-off", "lot-overdrawn"),
        slipped.codes(),
        slipped.text());
    assertEquals(Severity.ERROR, found.get(2).severity());
    assertEquals(
        "of lot FO-3301 68.5 kg are left, TG-44-2026-12-01-1 takes 70 kg", found.get(2).headline());
  }

  @Test
  void aPlannedSizeTenTimesThatOfTheRecipeIsAskedFor() throws IOException {
    SlippedFolder slipped = folder().with(TG, "size: 1000 kg", "size: 10000 kg");
    assertEquals(List.of("batch-size-off"), slipped.codes(), slipped.text());
    assertTrue(slipped.text().contains("help: did you mean size: 1000 kg?"), slipped.text());
    slipped.with(TG, "size: 10000 kg", "size: 2500 kg");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void aNumberThatIsASlipAccusesNoDelivery() throws IOException {
    SlippedFolder slipped = folder().with(CF, "lot: SB-0411", "lot: SB 0411");
    assertEquals(List.of("data-unknown-lot"), slipped.codes(), slipped.text());
    slipped.with(CF, "lot: SB 0411", "lot: MZ-114");
    assertEquals(List.of("lot-of-another-ingredient"), slipped.codes(), slipped.text());
  }

  @Test
  void aPremixOfALaterDayIsAnotherOne() throws IOException {
    SlippedFolder slipped = folder();
    Path record = copy.resolve(MIN);
    Files.move(record, record.resolveSibling("MIN-WW-2026-11-19-1.yaml"));
    slipped.with(CF, "MIN-WW-2026-11-12-1", "MIN-WW-2026-11-19-1");
    assertTrue(slipped.codes().contains("lot-came-later"), slipped.text());
    assertTrue(
        slipped.text().contains("MIN-WW-2026-11-19-1 is of 2026-11-19, the batch is of 2026-11-18"),
        slipped.text());
  }

  @Test
  void finesOfMostOfABatchAreAskedFor() throws IOException {
    String fines = "fines: {weight: %s kg, to: the next feed}\nbags: {";
    SlippedFolder slipped = folder().with(CF, "bags: {", fines.formatted("90"));
    assertEquals(List.of("record-figure-off"), slipped.codes(), slipped.text());
    assertTrue(slipped.text().contains("help: did you mean 9 kg?"), slipped.text());
    slipped.with(CF, fines.formatted("90"), fines.formatted("1.5"));
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void bagsFinesAndSamplesAreNoMoreThanWasMade() throws IOException {
    String fines = "fines: {weight: 9 kg, to: the next feed}\nbags: {";
    SlippedFolder slipped = folder().with(CF, "bags: {", fines);
    assertEquals(List.of("yield-off-plan"), slipped.codes(), slipped.text());
    assertTrue(
        slipped
            .text()
            .contains(
                "96.9 kg bagged, 9 kg of fines and 0.5 kg of samples are 106.4 kg of 98.77 kg that"
                    + " the batch can have given"),
        slipped.text());
    slipped.with(CF, "rest: 21.9 kg", "rest: 13.9 kg");
    assertFalse(slipped.text().contains("of fines"), slipped.text());
    assertTrue(slipped.text().contains("88.9 kg were bagged of"), slipped.text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "full: 3, | full: 30, | full: 3",
        "of: 25 kg | of: 250 kg | of: 25 kg",
        "rest: 21.9 kg | rest: 219 kg | rest: 21.9 kg",
        "rest: 21.9 kg | rest: 2190 kg | rest: 21.9 kg"
      })
  void bagsThatAreFarOffAreAskedFor(String right, String wrong, String meant) throws IOException {
    SlippedFolder slipped = folder().with(CF, right, wrong);
    assertTrue(slipped.codes().contains("yield-off-plan"), slipped.text());
    assertTrue(slipped.text().contains("help: did you mean " + meant + "?"), slipped.text());
  }

  @Test
  void aPlanOfTheRecipeIsToldApartFromWhatItsLotsGive() throws IOException {
    SlippedFolder slipped = folder().with(CF, "rest: 21.9 kg", "rest: 12.9 kg");
    assertTrue(
        slipped.text().contains("is by the recipe and its size; by the weights and lots of this"),
        slipped.text());
  }

  @ParameterizedTest
  @CsvSource({"3 t, 3000 kg", "3000 t, 3000 kg", "3000 g, 3000 kg"})
  void aLotAThousandTimesOffIsAskedFor(String quantity, String meant) throws IOException {
    SlippedFolder slipped = folder().with(LOTS, "quantity: 3000 kg", "quantity: " + quantity);
    boolean right = quantity.equals("3 t");
    assertEquals(!right, slipped.codes().contains("lot-quantity-off"), slipped.text());
    assertEquals(!right, slipped.text().contains("did you mean " + meant + "?"), slipped.text());
  }

  @Test
  void finesThatGoToABatchWithoutRecordAreGivenNoBatchOfAnotherRecipe() throws IOException {
    String fines = "fines: {weight: 1 kg, to: CG-36-2026-12-02-1}\nbags: {";
    SlippedFolder slipped = folder().with(CF, "bags: {", fines);
    assertEquals(List.of("goes-to-no-batch"), slipped.codes(), slipped.text());
    assertFalse(slipped.text().contains("did you mean"), slipped.text());
    assertTrue(slipped.text().contains("help: plan that batch first"), slipped.text());
    assertTrue(slipped.text().contains(":27: error: the fines of"), slipped.text());
  }

  @ParameterizedTest
  @CsvSource({
    "carps, 'did you mean carp-grower, common-carp or carp-starter?'",
    "CF-13, did you mean CF-31",
    "nonsense, write the code of a recipe"
  })
  void whatALotIsPassedForIsNearAName(String name, String help) throws IOException {
    String passed = "inspection: passed\n    remark: dry, no weevils";
    String states =
        "states: [{state: passed-for, only-for: [%s], day: 2026-11-05, by: x, because: y}]";
    SlippedFolder slipped = folder().with(LOTS, passed, states.formatted(name));
    assertTrue(slipped.codes().contains("lot-passed-for-unknown"), slipped.text());
    assertTrue(slipped.text().contains("help: " + help), slipped.text());
  }

  @Test
  void aRecordWithoutItsStateMayBeOfAnotherRecipe() throws IOException {
    SlippedFolder slipped = folder().with(CF, "weight: 28.00 kg", "weight: 30.00 kg");
    String changed = "help: if the recipe was changed since, write made-from";
    assertTrue(slipped.text().contains(changed), slipped.text());
    slipped.with(CF, "size: 100 kg", "size: 100 kg\nmade-from: {commit: abc1234}");
    assertFalse(slipped.text().contains(changed), slipped.text());
  }

  @Test
  void ofAPremixItsOwnBatchesAreOffered() throws IOException {
    SlippedFolder slipped =
        folder().with(CF, "lot: MIN-WW-2026-11-12-1", "lot: MIN-WW-2026-11-21-1");
    assertEquals(List.of("data-unknown-lot"), slipped.codes(), slipped.text());
    assertTrue(slipped.text().contains("did you mean MIN-WW-2026-11-12-1?"), slipped.text());
    slipped.with(CF, "line: VIT-WW,", "line: VIT-WW, lot: VIT-WW-2026-11-12-1,");
    assertTrue(
        slipped.text().contains("help: write a record of that batch first, or fix the number"),
        slipped.text());
  }

  @Test
  void aStoreDoesNotGrow() throws IOException {
    String oil = "quantity: 800 kg\n";
    String more = "    corrections: [{day: 2026-11-12, by: x, more: %s kg, because: y}]\n";
    SlippedFolder slipped = folder().with(LOTS, oil, oil + more.formatted("900"));
    assertEquals(List.of("lot-count-off"), slipped.codes(), slipped.text());
    slipped.with(LOTS, more.formatted("900"), more.formatted("9"));
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void aPartBagOfNoBatchIsNotMistakenForWhatCameBefore() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(
                CF,
                "rest: 21.9 kg",
                "rest: 21.9 kg, begun-with: {batch: CF-31-2026-10-01-1, weight: 3 kg}");
    assertEquals(List.of("data-unknown-batch"), slipped.codes(), slipped.text());
    assertTrue(slipped.text().contains("help: write a record of that batch first"));
    slipped.with(CF, "CF-31-2026-10-01-1", "TG-44-2026-12-01-1");
    assertTrue(
        slipped.text().contains("cannot have been begun with a part bag of TG-44-2026-12-01-1"),
        slipped.text());
  }

  @Test
  void whereABatchCannotBePlannedNoDeliveryIsHeldAgainstOthers() throws IOException {
    SlippedFolder slipped = folder().with("ingredients/salt.yaml", "  moisture: ", "  moistur: ");
    assertTrue(slipped.codes().stream().noneMatch("lot-quantity-off"::equals), slipped.text());
  }

  @Test
  void aPlannedLotThatWillBeExpiredIsNamed() throws IOException {
    SlippedFolder slipped =
        folder().with(LOTS, "best-before: 2027-06-30", "best-before: 2026-11-30");
    assertTrue(slipped.text().contains("take another lot, and set this one apart"), slipped.text());
  }

  @Test
  void aRecordOfAPremixUsesTheStrictBound() throws IOException {
    SlippedFolder slipped = folder().with(MIN, "1.74 %, 1.78 %", "1.54 %, 1.98 %");
    assertTrue(
        slipped.text().contains("practice is at most 5 % [quality-outside-practice]"),
        slipped.text());
  }

  @Test
  void withoutLotsEverythingStillWorks() throws IOException {
    SlippedFolder slipped = folder();
    for (String path : List.of(LOTS, CF, MIN, TG)) {
      Files.delete(copy.resolve(path));
    }
    assertEquals(List.of(), slipped.codes(), slipped.text());
    assertFalse(OwnFolder.check(copy, LocalDate.of(2026, 11, 25)).tally().contains("batch"));
    assertEquals(
        "Searched: 0 batch records of batches/ and 0 lots of lots/.\n",
        OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "", "").text());
  }

  private static long errors(SlippedFolder slipped) throws IOException {
    return slipped.findings().stream().filter(it -> it.severity() == Severity.ERROR).count();
  }

  private static String texts(SlippedFolder slipped) {
    try {
      return slipped.text();
    } catch (IOException broken) {
      return broken.toString();
    }
  }

  private SlippedFolder folder() throws IOException {
    return SlippedFolder.withRecords(copy);
  }

  @Test
  void aPartBagOfARejectedBatchIsToldAtTheBag() throws IOException {
    String bags = "bags: {full: 3, of: 25 kg, rest: 21.9 kg";
    SlippedFolder slipped =
        folder()
            .with(MIN, "decision: released", "decision: rejected")
            .with(
                CF, bags + "}", bags + ", begun-with: {batch: MIN-WW-2026-11-12-1, weight: 1 kg}}");
    List<Integer> lines =
        slipped.findings().stream()
            .filter(one -> one.code().text().equals("lot-not-released"))
            .map(one -> one.span().from().line())
            .toList();
    assertEquals(2, lines.size(), slipped.text());
    assertTrue(lines.get(1) > lines.get(0), slipped.text());
  }
}
