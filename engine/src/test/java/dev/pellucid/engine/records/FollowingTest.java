package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What follows what in the example folder: trout feed TG-44 is planned behind catfish feed CF-31,
 * which holds groundnut cake, with the flush that practice asks for; then single slips.
 */
class FollowingTest {
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String TG = "batches/TG-44-2026-12-01-1.yaml";
  private static final String ROWS = "practice/sequence.yaml";
  private static final String FLUSHED =
      "flushed: {quantity: 5 kg, with: wheat-middlings, to: into the next carp or catfish feed}\n";
  private static final String GROUNDNUT = "{quantity: 5 kg, with: wheat-middlings";

  @TempDir Path copy = Path.of("");

  @Test
  void theExampleIsSilent() throws IOException {
    assertEquals(List.of(), folder().codes());
  }

  @Test
  void aFlushThatIsNotToldIsMissedAndTheRemedyCanBePastedIn() throws IOException {
    SlippedFolder slipped = folder().with(TG, FLUSHED, "");
    Finding found = only(slipped, "flush-missing");
    assertEquals(Severity.WARNING, found.severity());
    assertEquals(
        "TG-44-2026-12-01-1 follows CF-31-2026-11-18-1, which holds groundnut-cake: a flush of"
            + " 5 kg is asked for, none is given",
        found.headline());
    assertEquals(TG + ":5:8", found.span().place());
    assertEquals(ROWS, found.related().get(0).span().file().path());
    assertTrue(found.notes().get(0).endsWith("(common practice)"), found.notes().toString());
    String help = found.helps().get(0);
    String written = help.substring(help.indexOf("flushed: "));
    slipped.with(TG, "after: ", written + "\nafter: ");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void lessThanIsAskedForIsTooLittleAndMoreIsNot() throws IOException {
    SlippedFolder slipped = folder().with(TG, GROUNDNUT, "{quantity: 4.9 kg, with: maize");
    Finding found = only(slipped, "flush-too-small");
    assertEquals(
        "TG-44-2026-12-01-1 was flushed with 4.9 kg after CF-31-2026-11-18-1, which holds"
            + " groundnut-cake: 5 kg are asked for",
        found.headline());
    assertEquals("4.9 kg", found.span().text());
    slipped.with(TG, "4.9 kg", "12000 g");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void aFlushThatLeavesTheSameBehindIsNone() throws IOException {
    SlippedFolder slipped = folder().with(TG, GROUNDNUT, "{quantity: 20 kg, with: groundnut-cake");
    Finding found = only(slipped, "flush-missing");
    assertTrue(found.headline().startsWith("TG-44-2026-12-01-1 was flushed with groundnut-cake"));
    assertTrue(found.headline().contains("CF-31-2026-11-18-1"), found.headline());
  }

  @Test
  void whatMustNeverFollowIsAnErrorWhateverWasFlushed() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(
                ROWS,
                "flush: " + GROUNDNUT + ", to: into the next carp" + " or catfish feed}",
                "never: yes");
    Finding found = only(slipped, "must-not-follow");
    assertEquals(Severity.ERROR, found.severity());
    assertEquals(
        "TG-44-2026-12-01-1 follows CF-31-2026-11-18-1, which holds groundnut-cake, and must not",
        found.headline());
    // Who decides on a batch says that it was made, and no weight is told.
    slipped.with(TG, "after: ", "release: {decision: held, by: shift lead}\nafter: ");
    assertEquals(List.of("line-not-weighed", "must-not-follow"), slipped.codes(), slipped.text());
    assertEquals(Severity.WARNING, slipped.findings().get(1).severity());
    slipped.with(TG, "held", "rejected");
    assertEquals(List.of("line-not-weighed"), slipped.codes(), slipped.text());
  }

  @Test
  void aClosedRecordIsLeftAloneAndStillLeavesSomethingBehind() throws IOException {
    SlippedFolder slipped =
        folder().with(TG, FLUSHED, "").with(CF, "water:", "closed: yes\nwater:");
    assertEquals(List.of("flush-missing"), slipped.codes(), slipped.text());
    slipped.with(TG, "after: ", "closed: yes\nafter: ");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void onlyTheSpeciesOfTheRowMindIt() throws IOException {
    SlippedFolder slipped =
        folder().with(TG, FLUSHED, "").with(ROWS, "before: [salmonids]\n    flush", "flush");
    assertEquals(List.of("flush-missing"), slipped.codes(), slipped.text());
    slipped.with(ROWS, "groundnut-cake}\n", "groundnut-cake}\n    before: [crustaceans]\n");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void whatBothHoldIsNotMinded() throws IOException {
    SlippedFolder slipped =
        folder().with(TG, FLUSHED, "").with(ROWS, "groundnut-cake", "fish-meals");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  void withoutTheBatchBeforeNothingIsJudged() throws IOException {
    SlippedFolder slipped = folder().with(TG, FLUSHED, "").with(TG, "after: ", "# ");
    assertEquals(List.of(), slipped.codes(), slipped.text());
  }

  @Test
  @DisplayName("a premix leaves its copper for a feed, and a feed its metals for a vitamin premix")
  void premixesCountOnBothSides() throws IOException {
    SlippedFolder slipped = folder().with(TG, "CF-31-2026-11-18-1", "MIN-WW-2026-11-12-1");
    Finding copper = only(slipped, "flush-too-small");
    assertTrue(copper.headline().contains("MIN-WW-2026-11-12-1, which holds copper 2"));
    assertTrue(copper.headline().endsWith("10 kg are asked for"), copper.headline());
    slipped.with(TG, "quantity: 5 kg", "quantity: 10 kg");
    Path vitamins = copy.resolve("batches/VIT-TR-2026-12-01-1.yaml");
    Files.writeString(vitamins, "size: 5 kg\nafter: TG-44-2026-12-01-1\n");
    Finding metals = only(slipped, "flush-missing");
    assertTrue(metals.headline().contains("VIT-TR-2026-12-01-1 follows TG-44-2026-12-01-1"));
    assertTrue(metals.headline().contains("zinc-sulphate"), metals.headline());
    assertFalse(metals.headline().contains("copper 1"), metals.headline());
  }

  @Test
  @DisplayName("where the batch before was made with another feed, what was weighed counts")
  void whatWasMadeCountsNotWhatWasPlanned() throws IOException {
    SlippedFolder slipped =
        folder()
            .with(TG, FLUSHED, "")
            .with(CF, "  - {line: groundnut-cake, weight: 14.01 kg}\n", "");
    assertFalse(slipped.codes().contains("flush-missing"), slipped.text());
    assertTrue(slipped.codes().contains("line-not-weighed"), slipped.text());
  }

  @Test
  void aFolderWithoutASequenceIsToldThatAlone() throws IOException {
    SlippedFolder slipped =
        folder().with(TG, FLUSHED, "").with("plant/river-mill.yaml", "also-makes", "# also-makes");
    Files.delete(copy.resolve(ROWS));
    assertEquals(List.of("practice-missing"), slipped.codes(), slipped.text());
  }

  private static Finding only(SlippedFolder slipped, String code) throws IOException {
    assertEquals(List.of(code), slipped.codes(), slipped.text());
    return slipped.findings().get(0);
  }

  private SlippedFolder folder() throws IOException {
    return SlippedFolder.withRecords(copy);
  }
}
