package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings of a dryer by weight, by meter and by both, as the sheet asks for them. */
class DryingReadingsTest {
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String LAST = "{at: 9 h, moisture: 9.1 %}";

  @TempDir Path root = Path.of("");

  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(root);
  }

  @Test
  void aTrayMayBeWeighedAndReadToo() throws IOException {
    // 2 kg with 23.9 % of water hold 1.522 kg of dry matter: 8.75 %.
    folder.with(CF, LAST, "{at: 9 h, tray: 1.668 kg, moisture: 9.0 %}");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void whereTheTwoDifferBothAreNamedAndTheMeterCounts() throws IOException {
    folder.with(CF, LAST, "{at: 9 h, tray: 1.727 kg, moisture: 9.0 %}");
    assertEquals(List.of("data-record"), folder.codes(), folder.text());
    says("warning: a tray of 1.727 kg has a moisture of 11.87 %, 9 % was read");
    folder.with(CF, "tray: 1.727 kg, moisture", "tray: 1.5 kg, moisture");
    says("a tray of 1.5 kg weighs less than the dry matter that was loaded onto it, 9 % was read");
    assertEquals(List.of("data-record"), folder.codes(), folder.text());
  }

  @Test
  void withoutLoadTheMoistureIsEnough() throws IOException {
    folder
        .with(CF, "  load: 2 kg\n", "")
        .with(CF, "{at: 3 h, tray: 1.815 kg}", "{at: 3 h, tray: 1.815 kg, moisture: 16 %}")
        .with(CF, "{at: 6 h, tray: 1.712 kg}", "{at: 6 h, moisture: 11 %}");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void ofAReadingThatIsRefusedNothingIsSaidOfTheEnd() throws IOException {
    folder.with(CF, LAST, "{at: 9 h}");
    assertEquals(List.of("data-record"), folder.codes(), folder.text());
    folder.with(CF, "{at: 9 h}", "{at: 9 h, moisture: 9.1}");
    assertEquals(1, folder.findings().size(), folder.text());
  }

  private void says(String words) throws IOException {
    assertTrue(folder.text().contains(words), folder.text());
  }
}
