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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A weight that is off, and what the record tells of it. */
class WeightToldTest {
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String DEVIATIONS = "deviations:\n";

  @TempDir Path root = Path.of("");

  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(root);
  }

  @Test
  void toldByItsNameInABatchThatWasReleasedItIsANote() throws IOException {
    folder.with(CF, "weight: 8.002 kg", "weight: 8.300 kg");
    assertEquals(List.of(Severity.WARNING), severities());
    folder.with(CF, DEVIATIONS, DEVIATIONS + "  - Maize 0.3 kg too much, it was fed in by hand.\n");
    assertEquals(List.of(Severity.NOTE), severities());
    assertTrue(
        folder.text().contains("note: told under deviations, and released by shift lead"),
        folder.text());
    folder.with(CF, "Maize 0.3 kg", "maize-gluten 0.3 kg");
    assertEquals(List.of(Severity.WARNING), severities());
  }

  @Test
  void whileNobodyReleasedItItIsAWarning() throws IOException {
    folder
        .with(CF, "weight: 8.002 kg", "weight: 8.300 kg")
        .with(CF, DEVIATIONS, DEVIATIONS + "  - maize 0.3 kg too much\n")
        .with(CF, "decision: released, by: shift lead", "decision: held, by: shift lead");
    assertEquals(List.of(Severity.WARNING), severities());
  }

  @Test
  void waterIsToldByItsNameToo() throws IOException {
    folder.with(CF, "water: 17.55 kg", "water: 18.2 kg");
    assertEquals(List.of(Severity.WARNING), severities());
    folder.with(CF, DEVIATIONS, DEVIATIONS + "  - 0.65 kg more water, the bran was dry\n");
    assertEquals(List.of(Severity.NOTE), severities());
  }

  @Test
  void aWeightWithItsPointMovedStaysAWarning() throws IOException {
    folder
        .with(CF, "weight: 8.002 kg", "weight: 80.02 kg")
        .with(CF, DEVIATIONS, DEVIATIONS + "  - maize from another lot\n");
    assertTrue(folder.text().contains("did you mean 8.002 kg?"), folder.text());
    assertTrue(severities().stream().noneMatch(Severity.NOTE::equals), folder.text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"8.0 g", "24.0 g"})
  void theWeightOfADilutionIsRecognised(String shown) throws IOException {
    Files.writeString(
        root.resolve("batches/CG-36-2026-11-24-1.yaml"),
        "size: 60 kg\nweighed:\n  - {line: soybean-oil, weight: 1.800 kg}\n"
            + "  - {line: mixed-tocopherols, weight: "
            + shown
            + "}\n");
    String help = "help: that is the weight of the dilution: write 12 g";
    assertTrue(folder.text().contains(help), folder.text());
    folder.with("batches/CG-36-2026-11-24-1.yaml", shown, "18.0 g");
    assertFalse(folder.text().contains(help), folder.text());
    assertTrue(folder.codes().contains("weight-off-target"), folder.text());
  }

  private List<Severity> severities() throws IOException {
    return folder.findings().stream()
        .filter(it -> it.code().text().equals("weight-off-target"))
        .map(Finding::severity)
        .toList();
  }
}
