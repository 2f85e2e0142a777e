package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a laboratory found, against the limits of the recipe and of the law. */
class ResultOutsideLimitsTest {
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String CODE = "result-outside-limits";
  private static final String END = "counted:";
  private static final String DRYING =
      """
      drying:
        before: 23.9 %
        load: 2 kg
        readings:
          - {at: 3 h, tray: 1.815 kg}
          - {at: 6 h, tray: 1.712 kg}
          - {at: 9 h, moisture: 9.1 %}
      """;

  @TempDir Path root = Path.of("");

  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(root);
  }

  @Test
  void beyondTheLawIsAnErrorAtTheMoistureOfTheSample() throws IOException {
    found("moisture: 9.0 %, cadmium: 2 mg/kg, selenium: 0.60 mg/kg, aflatoxin-b1: 0.05 mg/kg");
    assertEquals(3, said().size(), folder.text());
    // 2 / 0.91 * 0.88 = 1.934
    says("found in CF-31-2026-11-18-1: cadmium 1.9 mg/kg at 12 % moisture, the legal maximum (EU)");
    says("selenium 0.58 mg/kg at 12 % moisture, the legal maximum (EU) is 0.50 mg/kg");
    says("aflatoxin-b1 0.048 mg/kg at 12 % moisture, the legal maximum (EU) is 0.010 mg/kg");
    says("note: the moisture of 9 % was found in the same sample");
    says("help: mvn pellucid:recall -Dpellucid.batch=CF-31-2026-11-18-1 says who has it");
    says("help: local law may ask that the authority is told at once");
    assertEquals(List.of(Severity.ERROR, Severity.ERROR, Severity.ERROR), severities());
    assertFalse(folder.text().contains("or with released"), folder.text());
  }

  @Test
  void withoutMoistureThatOfAnotherSampleCounts() throws IOException {
    folder.with(
        CF,
        END,
        "results:\n  - {day: 2026-11-20, by: laboratory, moisture: 10.0 %}\n"
            + "  - {day: 2026-11-24, by: laboratory, cadmium: 2 mg/kg}\n"
            + END);
    says("note: the moisture of 10 % was found in another sample of the batch");
  }

  @Test
  void elseThatOfTheDryerAndElseThatOfTheRecipe() throws IOException {
    found("cadmium: 2 mg/kg");
    says("note: the moisture of 9.1 % is the last that was read in the dryer");
    folder.with(CF, DRYING, "");
    assertTrue(folder.text().contains("none was found"), folder.text());
  }

  @Test
  void aMoistureWithItsPointMovedIsNotReckonedWith() throws IOException {
    // By 90 % moisture 0.3 mg/kg would be 2.6 mg/kg at 12 %.
    found("moisture: 90 %, cadmium: 0.3 mg/kg");
    assertEquals(List.of(), said(), folder.text());
  }

  @Test
  void beyondAnotherLimitIsAWarning() throws IOException {
    found("moisture: 9.0 %, crude-protein: 27.5 %");
    assertEquals(List.of(Severity.WARNING), severities());
    says("found in CF-31-2026-11-18-1: crude-protein 27.5 %, the minimum is 29.0 %");
    says("write decided-later: with on-hold, or with released and the reason");
  }

  /** The limit is 1 mg/kg at 12 % moisture; digits that were not found say nothing. */
  @ParameterizedTest
  @CsvSource({
    "12.0 %, 1 mg/kg, 0",
    "12.0 %, 1.0 mg/kg, 0",
    "12.0 %, 1000 µg/kg, 0",
    "12.1 %, 1.00 mg/kg, 0",
    "12.1 %, 1.000 mg/kg, 1",
    "12.0 %, 1.02 mg/kg, 1",
    "12.0 %, 1020 µg/kg, 1",
    "9.0 %, 1.03 mg/kg, 0",
    "9.0 %, 1.06 mg/kg, 1",
    "9.0 %, below 3 mg/kg, 0",
    "9.0 %, none, 0"
  })
  void whatIsTheSameInItsDigitsIsNotBeyond(String moisture, String cadmium, int findings)
      throws IOException {
    found("moisture: " + moisture + ", cadmium: " + cadmium);
    long ofCadmium = said().stream().filter(it -> it.about().subject().equals("cadmium")).count();
    assertEquals(findings, ofCadmium, folder.text());
  }

  @Test
  void aClosedBatchIsHeldAgainstItToo() throws IOException {
    found("moisture: 9.0 %, cadmium: 2 mg/kg");
    folder.with(CF, "water:", "closed: yes\nwater:");
    assertEquals(List.of(Severity.ERROR), severities());
  }

  @Test
  void aDecisionOfThatDayOrLaterEndsIt() throws IOException {
    found("moisture: 9.0 %, cadmium: 2 mg/kg, crude-protein: 27.5 %");
    assertEquals(List.of(Severity.ERROR, Severity.WARNING), severities());
    decided("2026-11-23", "released");
    assertEquals(List.of(Severity.ERROR, Severity.WARNING), severities());
    folder.with(CF, "day: 2026-11-23, by: quality", "day: 2026-11-24, by: quality");
    assertEquals(List.of(Severity.NOTE), severities());
    says("note: it was released all the same, with a reason");
    folder.with(CF, "decision: released, because", "decision: on-hold, because");
    assertEquals(List.of(Severity.NOTE, Severity.NOTE), severities());
    folder.with(CF, "decision: on-hold, because", "decision: withdrawn, because");
    assertEquals(List.of(), said(), folder.text());
  }

  @Test
  void theReleaseItselfCountsWhereItIsLaterAndHasAReason() throws IOException {
    folder.with(
        CF,
        "durability:",
        "results:\n  - {day: 2026-11-19, by: laboratory, crude-protein: 27.5 %}\ndurability:");
    assertEquals(List.of(Severity.WARNING), severities());
    folder.with(CF, "day: 2026-11-19}", "day: 2026-11-19, because: for big fish}");
    assertEquals(List.of(), said(), folder.text());
  }

  @Test
  void aSumIsOverItsMaximumByOneOfItsParts() throws IOException {
    found("moisture: 9.0 %, dl-pcb: 0.008 µg/kg");
    says("dioxins + dl-pcb 0.0077 µg/kg at 12 % moisture, the legal maximum (EU) is 0.0055 µg/kg");
  }

  private void found(String figures) throws IOException {
    folder.with(
        CF, END, "results:\n  - {day: 2026-11-24, by: laboratory, " + figures + "}\n" + END);
  }

  private void decided(String day, String decision) throws IOException {
    folder.with(
        CF,
        END,
        "decided-later:\n  - {day: "
            + day
            + ", by: quality, decision: "
            + decision
            + ", because: looked at}\n"
            + END);
  }

  private List<Finding> said() throws IOException {
    return folder.findings().stream().filter(it -> it.code().text().equals(CODE)).toList();
  }

  private List<Severity> severities() throws IOException {
    return said().stream().map(Finding::severity).toList();
  }

  private void says(String words) throws IOException {
    assertTrue(folder.text().contains(words), folder.text());
  }
}
