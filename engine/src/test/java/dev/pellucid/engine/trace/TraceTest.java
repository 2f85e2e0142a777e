package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.trace.Trace.Maybe;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Traces of the example folder, and of slips in its records. */
class TraceTest {
  private static final Path EXAMPLE = Example.whole();
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String MIN = "batches/MIN-WW-2026-11-12-1.yaml";
  private static final String TG = "batches/TG-44-2026-12-01-1.yaml";
  private static final String PREMIX = "MIN-WW-2026-11-12-1";
  private static final String FEED = "CF-31-2026-11-18-1";

  @TempDir Path copy = Path.of("");

  @Test
  @DisplayName("a lot of an ingredient, through the premix that it went into")
  void ofALot() throws IOException {
    Approvals.verify(OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "se1-9042", "").text());
  }

  @Test
  @DisplayName("a lot of which part is put aside for a planned batch, in kg of its recipe")
  void ofALotThatIsPlannedToo() throws IOException {
    Approvals.verify(OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "SB-0411", "").text());
  }

  @Test
  @DisplayName("a batch of a premix is a lot in feeds")
  void ofABatchOfAPremix() throws IOException {
    Approvals.verify(OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, PREMIX, "").text());
  }

  @Test
  @DisplayName("a batch, down to the raw materials and up to where it went")
  void ofABatch() throws IOException {
    Approvals.verify(OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "", FEED).text());
  }

  @Test
  void anUnknownNumberIsToldWithNearOnes() throws IOException {
    TraceReport trace = OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "SB-0114", "");
    assertEquals(
        List.of("no lot or batch of this folder has the number SB-0114; did you mean SB-0411?"),
        trace.unknown());
    assertTrue(
        trace.text().startsWith("Searched: 3 batch records of batches/ and 7 lots of lots/"));
    assertEquals(
        1, OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "", "NOPE").unknown().size());
  }

  @Test
  void aLotIsNoBatch() throws IOException {
    assertEquals(
        List.of("SB-0411 is a lot and no batch; -Dpellucid.lot=SB-0411 tells where it went"),
        OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "", "SB-0411").unknown());
  }

  @Test
  void capitalsInARecordDoNotHideALot() throws IOException {
    SlippedFolder slipped = folder().with(CF, "lot: SB-0411", "lot: sb-0411");
    assertEquals(List.of(), slipped.codes(), slipped.text());
    assertEquals(28.0, kg("SB-0411", FEED));
    folder().with(CF, "lot: " + PREMIX, "lot: min-ww-2026-11-12-1");
    assertEquals(0.21, kg(PREMIX, FEED));
  }

  @Test
  void aRecordThatCannotBeReadIsNamed() throws IOException {
    folder().with(CF, "size: 100 kg", "size: 100 kg\nweighed: [");
    TraceReport trace = OwnFolder.trace(copy, new PrintedPaths("r/"), "SB-0411", "");
    assertEquals(List.of("r/" + CF + " cannot be read"), trace.unsearched());
    assertTrue(
        trace.text().contains("NOT SEARCHED, so that this answer may not be whole:\n  r/" + CF));
    assertTrue(trace.findings().get(0).span().file().path().endsWith(CF));
    assertEquals(
        List.of("the record of " + FEED + " cannot be read: fix it first"),
        OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "", FEED).unknown());
  }

  @Test
  void aLotOfAMisspeltNumberIsFoundUnderItAndMayBeAnyOther() throws IOException {
    folder().with(CF, "lot: SB-0411", "lot: SB-0141");
    assertEquals(28.0, kg("SB-0141", FEED));
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "");
    assertEquals(List.of(FEED), may(trace));
    assertEquals(List.of(CF + " has an error"), trace.unsearched());
  }

  @Test
  void aLotWhoseFileHasAnErrorIsFoundAllTheSame() throws IOException {
    folder().with("lots/2026-11.yaml", "quantity: 6000 kg", "quantity: 6000 bags");
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "");
    assertEquals(28.0, kg("SB-0411", FEED));
    assertEquals(List.of("lots/2026-11.yaml has an error"), trace.unsearched());
  }

  @Test
  void aLotWithTheNumberOfABatchIsToldAndBothAreFollowed() throws IOException {
    SlippedFolder slipped =
        folder()
            .with("lots/2026-11.yaml", "number: SE1-9042", "number: " + PREMIX)
            .with(MIN, "lot: SE1-9042", "lot: " + PREMIX);
    assertTrue(
        slipped.text().contains("a lot and a batch have the number " + PREMIX), slipped.text());
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, PREMIX, "");
    assertEquals(2, trace.onward().get(0).holds().size());
    assertEquals(List.of(PREMIX), trace.onward().get(0).circle());
  }

  @Test
  void recordsThatTakeEachOtherEndTheTraceAndAreTold() throws IOException {
    folder().with(MIN, "selenite-1, lot: SE1-9042", "selenite-1, lot: " + FEED);
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "");
    assertEquals(List.of(FEED, PREMIX), trace.onward().get(0).circle());
    assertTrue(trace.text().contains("at least 28.0 "), trace.text());
  }

  @Test
  void aLotThatCameLaterIsNotLookedForInWhatWasMadeBefore() throws IOException {
    folder().with(CF, ", lot: FM-26-1187", "");
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "FM-26-1203", "");
    assertEquals(List.of(FEED), may(trace));
    folder()
        .with(CF, ", lot: FM-26-1187", "")
        .with("lots/2026-11.yaml", "2026-11-16", "2026-11-19");
    TraceReport later = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "FM-26-1203", "");
    assertEquals(List.of(), may(later));
    assertEquals(List.of(FEED), later.onward().get(0).earlier());
    assertTrue(later.text().contains("Not counted: " + FEED), later.text());
  }

  @Test
  void whatALineWasFlushedWithMayBeOfAnyLot() throws IOException {
    TraceReport trace = OwnFolder.trace(EXAMPLE, PrintedPaths.BELOW_FOLDER, "WM-77", "");
    assertTrue(
        trace
            .text()
            .contains("wheat-middlings: the line was flushed with it, its lot is not given"),
        trace.text());
  }

  @Test
  void supplierAndDecisionAreTold() throws IOException {
    folder().with(CF, "decision: released", "decision: rejected");
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "");
    assertTrue(
        trace
            .text()
            .contains(
                " from Quernhollow Grain Store (their lot SOY 26/118, delivery note 2211), best"
                    + " before"),
        trace.text());
    assertTrue(trace.text().contains(FEED + "  2026-11-18  rejected"), trace.text());
  }

  @Test
  void aRecordOfWhatHasNoRecipeAnyMoreIsTold() throws IOException {
    folder().with(TG, "after: CF-31-2026-11-18-1\n", "");
    Files.move(copy.resolve(CF), copy.resolve(CF.replace("CF-31", "CF-99")));
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "");
    assertEquals(List.of("CF-99 has no recipe or premix that can be read"), trace.unsearched());
    assertEquals(28.0, kg("SB-0411", "CF-99-2026-11-18-1"));
  }

  @Test
  void aFileThatWouldNotBeReadIsNamed() throws IOException {
    folder().with(TG, "after: CF-31-2026-11-18-1\n", "");
    Files.move(copy.resolve(CF), copy.resolve(CF.replace(".yaml", ".yml")));
    TraceReport trace = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, "SB-0411", "");
    assertEquals(List.of(CF.replace(".yaml", ".yml") + " cannot be read"), trace.unsearched());
  }

  @Test
  void aWarningInALotIsNoReasonToDoubtTheTrace() throws IOException {
    assertEquals(
        List.of(), OwnFolder.trace(EXAMPLE, new PrintedPaths("r/"), "SB-0411", "").unsearched());
    folder().with("lots/2026-11.yaml", "crude-ash: 16.8 %", "crude-ash: 3.0 %");
    assertEquals(
        List.of(), OwnFolder.trace(copy, new PrintedPaths("r/"), "SB-0411", "").unsearched());
  }

  @Test
  void aFileOfLotsThatWouldNotBeReadIsNamed() throws IOException {
    folder();
    Files.move(copy.resolve("lots/2026-11.yaml"), copy.resolve("lots/2026-11.yml"));
    TraceReport trace = OwnFolder.trace(copy, new PrintedPaths("r/"), "SB-0411", "");
    assertTrue(trace.unsearched().contains("r/lots/2026-11.yml cannot be read"), trace.text());
    assertEquals(28.0, kg("SB-0411", FEED));
  }

  private double kg(String lot, String batch) throws IOException {
    return OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, lot, "")
        .onward()
        .get(0)
        .holds()
        .stream()
        .filter(one -> one.batch().number().equals(batch))
        .findFirst()
        .orElseThrow()
        .kg()
        .told();
  }

  private static List<String> may(TraceReport trace) {
    return trace.onward().get(0).may().stream()
        .map(Maybe::batch)
        .map(Trace.Batch::number)
        .filter(number -> !number.startsWith("TG-44"))
        .toList();
  }

  private SlippedFolder folder() throws IOException {
    try (var files = Files.walk(copy)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        if (!file.equals(copy)) {
          Files.delete(file);
        }
      }
    }
    return SlippedFolder.withRecords(copy);
  }
}
