package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.quality.LabSpread;
import dev.pellucid.engine.trend.History;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.Measured.What;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.engine.trend.OwnSpread;
import dev.pellucid.engine.trend.Run;
import dev.pellucid.engine.trend.RunRule;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published figures of control charts. */
class RunLengthTest {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 1);

  @ParameterizedTest(name = "{0}: {1} batches until a false alarm")
  @DisplayName("Champ and Woodall, Technometrics 29 (1987), table 1, from memory")
  @CsvSource({
    "BEYOND_THREE, 370.40",
    "BEYOND_THREE TWO_OF_THREE, 225.44",
    "BEYOND_THREE EIGHT_ON_ONE_SIDE, 152.73",
    "BEYOND_THREE TWO_OF_THREE EIGHT_ON_ONE_SIDE, 122.05"
  })
  void untilAFalseAlarm(String rules, double published) {
    Set<RunRule> asked = EnumSet.noneOf(RunRule.class);
    for (String rule : rules.split(" ", -1)) {
      asked.add(RunRule.valueOf(rule));
    }
    Random random = new Random(7);
    double batches = 0;
    int series = 1500;
    for (int i = 0; i < series; i++) {
      batches += untilAlarm(random, asked);
    }
    double mean = batches / series;
    // The spread of a run length is about its mean; four of the mean of 1500.
    assertEquals(published, mean, 4 * published / Math.sqrt(series));
  }

  private static int untilAlarm(Random random, Set<RunRule> asked) {
    List<MeasuredBatch> batches = new ArrayList<>();
    for (int length = 300; length < 100_000; length *= 4) {
      while (batches.size() < length) {
        batches.add(batch(batches.size(), random.nextGaussian()));
      }
      for (Run run : History.of(batches).courses().get(0).runs()) {
        if (asked.contains(run.rule())) {
          return run.to() + 1;
        }
      }
    }
    throw new AssertionError("no alarm in 100,000");
  }

  private static MeasuredBatch batch(int place, double spreads) {
    Measured figure =
        new Measured(
            What.CONTENT,
            "x",
            "x",
            Unit.PERCENT,
            spreads,
            OptionalDouble.of(0),
            OptionalDouble.of(1),
            true,
            new SourceFile("x", "x").beginning());
    return new MeasuredBatch(
        "A", "A-" + place, DAY.plusDays(place), 1, "", false, List.of(figure), Optional.empty());
  }

  @Test
  @DisplayName("flow rates of section 6.3.2.2 of the NIST/SEMATECH e-Handbook, from memory")
  void flowRates() {
    List<Double> flow = List.of(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);
    double spread = OwnSpread.ofAll(flow);
    double mean = flow.stream().mapToDouble(it -> it).average().orElseThrow();
    assertEquals(50.81, mean, 1e-9);
    assertEquals(1.8778, spread * 1.128, 0.00005);
    assertEquals(55.8041, mean + 3 * spread, 0.00005);
    assertEquals(45.8159, mean - 3 * spread, 0.00005);
  }

  @Test
  @DisplayName("three spreads are 2.66 mean moving ranges (ISO 7870-2, from memory)")
  void threeSpreadsAre266Ranges() {
    assertEquals(2.66, 3 * OwnSpread.ofAll(List.of(1.0, 2.0, 1.0, 2.0, 1.0)), 0.0005);
  }

  @Test
  @DisplayName("AMC Technical Brief 17: 4 % of a figure of 1 %, 8 % of one of 0.01 %")
  void betweenLaboratories() {
    assertEquals(0.04, LabSpread.of(0.01, Kind.SHARE) / 0.01, 0.0005);
    assertEquals(0.08, LabSpread.of(0.0001, Kind.SHARE) / 0.0001, 0.0005);
    assertEquals(LabSpread.of(0.138, Kind.SHARE), LabSpread.of(0.1381, Kind.SHARE), 1e-4);
  }

  @Test
  @DisplayName("Sweeney 1989: 0.52 points between nine laboratories at 47.65 % crude protein")
  void proteinBetweenLaboratories() {
    double ratio = 0.0052 / LabSpread.of(0.4765, Kind.SHARE);
    assertTrue(ratio > 0.5 && ratio < 1, ratio + " of what the curve says");
  }
}
