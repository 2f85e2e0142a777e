package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Batches of one recipe over some weeks: what drifts, what is a slip, and what is silent. */
class QualityOverTimeTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);

  /**
   * Of the meter (a quarter of a point) and of the laboratory at 9 %, by the formula of the page.
   */
  private static final double SPREAD = Math.hypot(0.0025, 0.02 * Math.exp(0.8495 * Math.log(0.09)));

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void aRecipe() throws IOException {
    folder =
        new SmallFolder(root)
            .ingredient("pea-meal", "moisture: 12 %, crude-protein: 24 ± 1.0 %")
            .ingredient("oat-meal", "moisture: 10 %, crude-protein: 13 ± 0.8 %")
            .recipe(
                """
                  batch 100 kg weighed
                mix
                  pea-meal 60 %
                  oat-meal rest
                process
                  add-water on-mix 18 %
                  dry moisture 9 % accept 8 to 10 %
                limits
                  crude-protein min 5 %
                """);
  }

  private static String number(int i) {
    return "A-1-" + FIRST.plusDays(2L * i) + "-1";
  }

  private void batch(String number, String more) throws IOException {
    folder.with(
        "batches/" + number + ".yaml",
        """
        size: 100 kg
        weighed:
          - {line: pea-meal, weight: 60 kg}
          - {line: oat-meal, weight: 40 kg}
        water: 18 kg
        drying:
          before: 24 %
          readings:
            - {at: 3 h, moisture: 15 %}
            - {at: 6 h, moisture: 9 %}
        """
            + more);
  }

  private static String result(LocalDate day, String found) {
    return "results:\n  - {day: " + day + ", by: laboratory, " + found + "}\n";
  }

  private void found(int i, String found) throws IOException {
    batch(number(i), result(FIRST.plusDays(2L * i + 1), found));
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.4f %%", share * 100);
  }

  private Optional<Finding> drift() throws IOException {
    List<Finding> drifts =
        folder.findings().stream()
            .filter(one -> one.code().text().equals("quality-drifts"))
            .toList();
    assertTrue(drifts.size() <= 1, "one for a recipe and figure");
    return drifts.stream().findFirst();
  }

  private static String file(Finding finding) {
    return finding.span().file().stem();
  }

  @Test
  @DisplayName("a meter that reads less and less is told at the first batch that a rule speaks of")
  void aDriftOfTheMeter() throws IOException {
    Random random = new Random(2);
    double[] spreads = new double[20];
    int told = -1;
    for (int i = 0; i < 20; i++) {
      spreads[i] = 0.6 * random.nextGaussian() + Math.max(0, i - 6) * 0.35;
      found(i, "moisture: " + percent(0.09 + spreads[i] * SPREAD));
      boolean expected = speaks(spreads, i);
      assertEquals(expected, drift().isPresent(), i + " " + spreads[i]);
      if (expected) {
        assertEquals(number(i), file(drift().orElseThrow()));
        told = told < 0 ? i : told;
      }
    }
    assertTrue(told >= 8 && told <= 15, "first told at " + told);
    Finding last = drift().orElseThrow();
    assertEquals(Severity.WARNING, last.severity());
    assertEquals("moisture", last.about().subject());
  }

  /** The four rules in one loop, of the last figure alone. */
  private static boolean speaks(double[] z, int at) {
    int beyond = 0;
    boolean side = at >= 7;
    boolean rises = at >= 5;
    boolean falls = at >= 5;
    for (int back = 0; back < 8; back++) {
      if (at - back >= 0) {
        beyond += back < 3 && z[at - back] * Math.signum(z[at]) > 2 ? 1 : 0;
        side &= z[at - back] * z[at] > 0;
        if (back < 5 && at - back > 0) {
          rises &= z[at - back] > z[at - back - 1];
          falls &= z[at - back] < z[at - back - 1];
        }
      }
    }
    boolean two = Math.abs(z[at]) > 2 && beyond >= 2;
    return Math.abs(z[at]) > 3 || two || side || rises || falls;
  }

  @Test
  void withoutADriftNothingIsSaid() throws IOException {
    double[] spreads = {0.4, -0.8, 1.2, -0.1, -1.4, 0.9, 0.3, -0.6, 1.9, -0.2, 0.7, -1.1};
    for (int i = 0; i < spreads.length; i++) {
      found(i, "moisture: " + percent(0.09 + spreads[i] * SPREAD) + ", crude-protein: 20.0 %");
    }
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void exactlyThreeSpreadsIsSilentAndABitMoreIsNot() throws IOException {
    found(0, "moisture: " + String.format(Locale.ROOT, "%.9f %%", 100 * (0.09 + 3 * SPREAD)));
    // The text has nine decimals, so that it lies a billionth off the limit.
    found(0, "moisture: " + percent(0.09 + 2.999 * SPREAD));
    assertEquals(Optional.empty(), drift());
    found(0, "moisture: " + percent(0.09 + 3.001 * SPREAD));
    assertTrue(drift().orElseThrow().headline().contains("3.0 spreads above"), folder.text());
  }

  @Test
  void oneFarOffIsToldAtItsBatchWhileThoseAfterItAreAsExpected() throws IOException {
    double[] spreads = {0.4, -0.8, 4.2, -0.1, -1.4, 0.9};
    for (int i = 0; i < spreads.length; i++) {
      found(i, "moisture: " + percent(0.09 + spreads[i] * SPREAD));
    }
    assertEquals(number(2), file(drift().orElseThrow()));
    assertTrue(drift().orElseThrow().headline().contains("4.2 spreads above"), folder.text());
    for (int i = 6; i < 11; i++) {
      found(i, "moisture: " + percent(0.09 + (i % 2 - 0.5) * SPREAD));
    }
    assertEquals(Optional.empty(), drift(), "eight batches later");
  }

  @Test
  void ofABatchThatIsGoneNothingIsSaidUnlessItIsARun() throws IOException {
    batch(number(0), "closed: yes\n" + result(FIRST.plusDays(1), "moisture: 12 %"));
    assertEquals(Optional.empty(), drift());
    for (int i = 1; i < 9; i++) {
      batch(
          number(i),
          "closed: yes\n"
              + result(FIRST.plusDays(2L * i + 1), "moisture: " + (9.1 + i % 2 * 0.1) + " %"));
    }
    assertEquals(number(8), file(drift().orElseThrow()));
  }

  /** A second sample halves what the laboratory is off by, and moves the mean. */
  @Test
  void aSecondSampleCounts() throws IOException {
    found(0, "moisture: " + percent(0.09 + 3.5 * SPREAD));
    assertTrue(drift().isPresent());
    batch(
        number(0),
        "results:\n  - {day: 2026-09-02, by: laboratory, moisture: "
            + percent(0.09 + 3.5 * SPREAD)
            + "}\n  - {day: 2026-09-05, by: laboratory, moisture: 9.0 %}\n");
    assertEquals(Optional.empty(), drift());
  }

  /** It knows its own way better than the curve of all laboratories does. */
  @Test
  void aSpreadThatTheLaboratoryWritesCounts() throws IOException {
    found(0, "moisture: 9.90 ± 0.05 %");
    double spread = Math.hypot(0.0025, 0.0005);
    assertTrue(
        drift()
            .orElseThrow()
            .headline()
            .contains(String.format(Locale.ROOT, ", %.1f spreads above", 0.009 / spread)),
        folder.text());
    found(0, "moisture: 9.90 %");
    assertEquals(Optional.empty(), drift());
  }

  /** A drier feed holds more of all else: what the dryer does is told once. */
  @Test
  void atAnotherMoistureProteinIsExpectedAccordingly() throws IOException {
    // 60 % of 24 and 40 % of 13 at 88.8 % dry matter: 19.6 x 0.91 / 0.888.
    double fresh = 0.196 * 0.91 / 0.888;
    for (int i = 0; i < 8; i++) {
      double off = (i % 2 == 0 ? 1 : -1) * 0.0005;
      found(i, "moisture: 12 %, crude-protein: " + percent(fresh * 0.88 / 0.91 + off));
    }
    Finding only = drift().orElseThrow();
    assertEquals("moisture", only.about().subject(), folder.text());
  }

  @Test
  void proteinBelowWhatWasExpectedNamesTheLotThatNobodyAnalysed() throws IOException {
    folder.with(
        "lots/2026.yaml",
        "lots:\n  - {number: P-1, ingredient: pea-meal, received: 2026-08-20, quantity: 5000 kg,"
            + " supplier: Mill, supplier-lot: A, inspection: passed}\n");
    for (int i = 0; i < 8; i++) {
      found(i, "crude-protein: " + (19.6 - i % 2 * 0.1) + " %");
      Path file = root.resolve("batches/" + number(i) + ".yaml");
      Files.writeString(
          file, Files.readString(file).replace("{line: pea-meal,", "{line: pea-meal, lot: P-1,"));
    }
    String text = folder.text();
    assertTrue(
        text.contains(
            "crude-protein by the laboratory: the last 8 batches of A-1 are all below what was"
                + " expected [quality-drifts]"),
        text);
    assertTrue(
        text.contains(
            "lot P-1 of pea-meal is in all of them, and its crude-protein was not measured"),
        text);
    assertTrue(text.contains("help: send a second sample of the last batch"), text);
  }

  /** What was measured does not vary: only the laboratories are left, and a run is told sooner. */
  @Test
  void aMeasuredLotHasLessSpread() throws IOException {
    found(0, "moisture: 9 %, crude-protein: 18.0 %");
    assertEquals(Optional.empty(), drift(), "of lots as they come, two points are no wonder");
    folder.with(
        "lots/2026.yaml",
        "lots:\n  - {number: P-1, ingredient: pea-meal, received: 2026-08-20, quantity: 5000 kg,"
            + " supplier: Mill, supplier-lot: A, inspection: passed, contents: [{source: workshop,"
            + " moisture: 12 %, crude-protein: 24 %}]}\n"
            + "  - {number: O-1, ingredient: oat-meal, received: 2026-08-20, quantity: 5000 kg,"
            + " supplier: Mill, supplier-lot: A, inspection: passed, contents: [{source: workshop,"
            + " moisture: 10 %, crude-protein: 13 %}]}\n");
    Path file = root.resolve("batches/" + number(0) + ".yaml");
    Files.writeString(
        file,
        Files.readString(file)
            .replace("{line: pea-meal,", "{line: pea-meal, lot: P-1,")
            .replace("{line: oat-meal,", "{line: oat-meal, lot: O-1,"));
    assertTrue(drift().isPresent(), folder.text());
  }

  @Test
  void aRecipeThatIsChangedBetweenMakesNoRun() throws IOException {
    for (int i = 0; i < 16; i++) {
      boolean late = i >= 8;
      double mean = late ? 0.4 * 0.24 + 0.6 * 0.13 : 0.6 * 0.24 + 0.4 * 0.13;
      double dry = late ? 0.4 * 0.88 + 0.6 * 0.9 : 0.6 * 0.88 + 0.4 * 0.9;
      double off = (i % 2 == 0 ? 1 : -1) * 0.001;
      found(i, "moisture: 9.0 %, crude-protein: " + percent(mean * 0.91 / dry + off));
      if (late) {
        Path file = root.resolve("batches/" + number(i) + ".yaml");
        Files.writeString(
            file,
            Files.readString(file)
                .replace("weight: 60 kg", "weight: 4x kg")
                .replace("weight: 40 kg", "weight: 60 kg")
                .replace("4x", "40"));
      }
    }
    assertEquals(Optional.empty(), drift(), folder.text());
  }

  @Test
  void twoBatchesOfADayAreInTheirOrder() throws IOException {
    double[] spreads = {-1, -0.6, -0.2, 0.2, 0.6, 1.0};
    for (int i = 0; i < 6; i++) {
      // Written from the last to the first; serials 9 and 10 of a day sort by their number.
      int at = 5 - i;
      batch(
          "A-1-" + FIRST.plusDays(at / 3) + "-" + (8 + at % 3),
          result(FIRST.plusDays(20), "moisture: " + percent(0.09 + spreads[at] * SPREAD)));
    }
    Finding rising = drift().orElseThrow();
    assertEquals(
        "moisture by the laboratory rises from batch to batch, the last 6 of A-1",
        rising.headline());
    assertEquals("A-1-2026-09-02-10", file(rising));
  }

  @Test
  void aDryerThatEndsTooWetIsToldThoughEachIsAccepted() throws IOException {
    for (int i = 0; i < 8; i++) {
      batch(number(i), "");
      Path file = root.resolve("batches/" + number(i) + ".yaml");
      Files.writeString(file, Files.readString(file).replace("moisture: 9 %", "moisture: 9.6 %"));
    }
    assertEquals(List.of("quality-drifts"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("the last moisture in the dryer: the last 8 batches"));
  }

  @Test
  void bagsThatHoldLessThanWasToComeAreToldFromEightOn() throws IOException {
    for (int i = 0; i < 8; i++) {
      batch(number(i), "bags: {full: 3, of: 25 kg, rest: " + (21.5 + i % 3 * 0.2) + " kg}\n");
    }
    String text = folder.text();
    assertTrue(text.contains("feed in the bags, as a part of what was to come: the last 8"), text);
    assertTrue(text.contains("write that shrink into the file of the plant"), text);
  }

  @Test
  void aResultTenTimesOffIsASlip() throws IOException {
    found(0, "moisture: 9.1 %, crude-protein: 2.01 %");
    String text = folder.text();
    assertTrue(text.contains("crude-protein was found to be 2.01 %, as made 20.0"), text);
    assertTrue(text.contains("did you mean 20.1 %?"), text);
    assertEquals(List.of("result-off"), folder.codes(), text);
  }

  @Test
  void resultsOfOtherDaysAndOfWhatIsStillToBeMade() throws IOException {
    batch(number(0), result(FIRST.minusDays(3), "moisture: 30 %"));
    folder.with(
        "batches/A-1-2026-11-25-1.yaml",
        "size: 100 kg\n" + result(LocalDate.of(2026, 11, 25), "moisture: 9 %"));
    assertEquals(List.of("feed-moved-on-wrong-day", "result-off"), folder.codes(), folder.text());
    assertTrue(
        folder.text().contains("a result of A-1-2026-11-25-1, of which nothing was weighed yet"));
  }

  @Test
  void whatNoLaboratoryFindsIsTold() throws IOException {
    SlippedFolder example =
        SlippedFolder.withRecords(root.resolve("example"))
            .with(
                "batches/CF-31-2026-11-18-1.yaml",
                "release:",
                "results:\n  - {day: 2026-11-22, by: laboratory, digestible-protein: 27 %}\n"
                    + "release:");
    assertEquals(List.of("result-off"), example.codes(), example.text());
  }

  /** What the page on how to do this and that writes into the record of the example. */
  @Test
  void theResultOfTheHowToIsAsExpected() throws IOException {
    String record = "batches/CF-31-2026-11-18-1.yaml";
    String found =
        "results:\n  - {day: 2026-11-24, by: laboratory, moisture: 8.9 %, crude-protein: ";
    SlippedFolder example =
        SlippedFolder.withRecords(root.resolve("example"))
            .with(record, "release:", found + "31.0 %}\nrelease:");
    assertEquals(List.of(), example.codes(), example.text());
    example.with(record, "31.0 %", "26.0 %");
    assertEquals(
        List.of("quality-drifts", "result-outside-limits"), example.codes(), example.text());
  }

  @Test
  void belowAFigureIsNoFigure() throws IOException {
    found(0, "crude-protein: below 2 %");
    assertEquals(List.of("result-outside-limits"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("crude-protein below 2.0 %, the minimum is 5.0 %"));
  }

  @Test
  void aWeightThatIsASlipMakesNoDrift() throws IOException {
    found(0, "moisture: 9 %, crude-protein: 20.0 %");
    Path file = root.resolve("batches/" + number(0) + ".yaml");
    Files.writeString(file, Files.readString(file).replace("weight: 60 kg", "weight: 6.0 kg"));
    assertFalse(folder.text().contains("quality-drifts"), folder.text());
    // Four points off are told where the weights are no slip.
    found(0, "moisture: 9 %, crude-protein: 24.0 %");
    assertTrue(folder.text().contains("quality-drifts"), folder.text());
  }
}
