package dev.pellucid.engine.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The rules of a chart: at their limits, and against a second way of finding them. */
class RunRulesTest {

  @Test
  void aFigureOnThreeSpreadsIsNotBeyondThem() {
    assertEquals(List.of(), Made.runs(3));
    assertEquals(List.of(), Made.runs(-3));
    assertEquals(List.of(new Run(RunRule.BEYOND_THREE, 0, 0, true)), Made.runs(3.000001));
    assertEquals(List.of(new Run(RunRule.BEYOND_THREE, 0, 0, false)), Made.runs(-3.000001));
  }

  @Test
  void twoOfThreeAreBeyondTwoSpreadsToOneSide() {
    assertEquals(List.of(), Made.runs(2, 2, 2));
    assertEquals(List.of(), Made.runs(2.1, -2.1));
    assertEquals(List.of(), Made.runs(2.1, 0.5, -0.5, 2.1));
    assertEquals(List.of(new Run(RunRule.TWO_OF_THREE, 0, 1, true)), Made.runs(2.1, 2.1));
    assertEquals(List.of(new Run(RunRule.TWO_OF_THREE, 0, 2, true)), Made.runs(2.1, -2.1, 2.1));
    assertEquals(List.of(new Run(RunRule.TWO_OF_THREE, 0, 2, false)), Made.runs(-2.1, 1, -2.1));
  }

  /** Where the third of them lies within, the rule has spoken already. */
  @Test
  void ofTwoOfThreeTheLastIsBeyond() {
    assertEquals(List.of(new Run(RunRule.TWO_OF_THREE, 0, 1, true)), Made.runs(2.1, 2.2, 0.5));
  }

  @Test
  void theEighthOnOneSideIsTold() {
    double[] seven = {0.2, 1, 0.3, 1, 0.2, 1, 0.3};
    assertEquals(List.of(), Made.runs(seven));
    double[] eight = {0.2, 1, 0.3, 1, 0.2, 1, 0.3, 0.1};
    assertEquals(List.of(new Run(RunRule.EIGHT_ON_ONE_SIDE, 0, 7, true)), Made.runs(eight));
    double[] ninth = {0.2, 1, 0.3, 1, 0.2, 1, 0.3, 0.1, 0.2};
    assertEquals(new Run(RunRule.EIGHT_ON_ONE_SIDE, 0, 8, true), Made.runs(ninth).get(1));
  }

  @Test
  void aFigureOnTheCentreEndsARun() {
    assertEquals(List.of(), Made.runs(0.2, 1, 0.3, 1, 0, 1, 0.3, 0.1));
    assertEquals(List.of(), Made.runs(0, 1, 0.3, 1, 0.2, 1, 0.3, 0.1));
  }

  @Test
  void theSixthInARowIsTold() {
    assertEquals(List.of(), Made.runs(-1, -0.5, 0, 0.5, 1));
    assertEquals(
        List.of(new Run(RunRule.SIX_IN_A_ROW, 0, 5, true)), Made.runs(-1, -0.5, 0, 0.5, 1, 1.5));
    assertEquals(
        List.of(new Run(RunRule.SIX_IN_A_ROW, 1, 6, false)),
        Made.runs(-1, 1.5, 1, 0.5, 0, -0.5, -1));
    assertEquals(List.of(), Made.runs(-1, -0.5, 0, 0, 0.5, 1));
  }

  @Test
  @DisplayName("thousands of random series say the same by plain sets of windows")
  void asByWindows() {
    Random random = new Random(18);
    int spoken = 0;
    for (int series = 0; series < 6000; series++) {
      double[] spreads = series(random);
      Set<String> said = new TreeSet<>();
      for (Run run : Made.runs(spreads)) {
        said.add(run.rule() + " " + run.to() + " " + run.up());
      }
      assertEquals(byWindows(spreads), said, Arrays.toString(spreads));
      spoken += said.size();
    }
    assertTrue(spoken > 6000, spoken + " times a rule spoke");
  }

  /** Plain, coarse (with many that are equal or on a limit), drifting or stepping. */
  private static double[] series(Random random) {
    double[] spreads = new double[1 + random.nextInt(40)];
    double drift = random.nextInt(3) == 0 ? 0.3 * random.nextGaussian() : 0;
    double step = random.nextInt(3) == 0 ? random.nextGaussian() : 0;
    boolean coarse = random.nextBoolean();
    for (int i = 0; i < spreads.length; i++) {
      double one = random.nextGaussian() + drift * i + step;
      spreads[i] = coarse ? Math.rint(one * 2) / 2 : one;
    }
    return spreads;
  }

  /** Each rule as a sentence about the last so many figures, with no memory. */
  private static Set<String> byWindows(double[] z) {
    TreeSet<String> said = new TreeSet<>();
    for (int at = 0; at < z.length; at++) {
      for (int sign : new int[] {1, -1}) {
        double[] turned = new double[z.length];
        for (int i = 0; i < z.length; i++) {
          turned[i] = sign * z[i];
        }
        for (RunRule rule : spoken(turned, at)) {
          said.add(rule + " " + at + " " + (sign > 0));
        }
      }
    }
    return said;
  }

  private static List<RunRule> spoken(double[] z, int at) {
    List<RunRule> rules = new ArrayList<>();
    if (z[at] > 3.0000001) {
      rules.add(RunRule.BEYOND_THREE);
    }
    long beyond =
        Arrays.stream(z, Math.max(0, at - 2), at + 1).filter(it -> it > 2.0000001).count();
    if (z[at] > 2.0000001 && beyond >= 2) {
      rules.add(RunRule.TWO_OF_THREE);
    }
    if (at >= 7 && Arrays.stream(z, at - 7, at + 1).allMatch(it -> it > 1e-7)) {
      rules.add(RunRule.EIGHT_ON_ONE_SIDE);
    }
    boolean rising = at >= 5;
    for (int i = at - 4; rising && i <= at; i++) {
      rising = z[i] > z[i - 1] + 1e-9;
    }
    if (rising) {
      rules.add(RunRule.SIX_IN_A_ROW);
    }
    return rules;
  }
}
