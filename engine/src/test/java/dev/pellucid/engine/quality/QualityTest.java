package dev.pellucid.engine.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.quality.SieveAnalysis.Fraction;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quality figures against cases worked by hand and rules that were published. */
class QualityTest {
  private static final SieveAnalysis ONE =
      new SieveAnalysis(List.of(new Fraction(0.841, 0), new Fraction(0.595, 100)), 0);
  private static final SieveAnalysis TWO =
      new SieveAnalysis(
          List.of(new Fraction(0.841, 0), new Fraction(0.595, 50), new Fraction(0.420, 50)), 0);

  @Test
  @DisplayName("CV with n - 1, worked by hand: 2 4 4 4 5 5 7 9 has mean 5, s² 32/7 (from memory)")
  void coefficientOfVariation() {
    MixerTest test = new MixerTest(List.of(2.0, 4.0, 4.0, 4.0, 5.0, 5.0, 7.0, 9.0));
    assertEquals(5, test.mean(), 1e-12);
    assertEquals(Math.sqrt(32.0 / 7), test.deviation(), 1e-12);
    assertEquals(0.427618, test.variation(), 1e-6);
  }

  @Test
  @DisplayName("ten readings by hand: squares add up to 0.0036, CV = sqrt(0.0036 / 9) / 0.30")
  void tenReadings() {
    MixerTest test = new MixerTest(List.of(.30, .32, .28, .31, .29, .33, .27, .30, .32, .28));
    assertEquals(Math.sqrt(0.0036 / 9) / 0.30, test.variation(), 1e-12);
    assertEquals(Evenness.COMMON, test.evenness(0.05, 0.10));
  }

  @ParameterizedTest(name = "CV {0} %: {1}")
  @DisplayName("satisfactory up to 10 % (WFP), the trade standard is 5 % (Zinn, UC Davis)")
  @CsvSource({"0, STRICT", "5, STRICT", "5.001, COMMON", "10, COMMON", "10.001, UNEVEN"})
  void verdicts(double percent, Evenness evenness) {
    assertEquals(evenness, Evenness.of(percent / 100, 0.05, 0.10));
  }

  @Test
  @DisplayName(
      "a CV of 5 % gives 90 % of the amount in 95 % of meals (Zinn, A Guide to Feed Mixing)")
  void tradeStandard() {
    assertTrue(1 - 1.959964 * 0.05 >= 0.90);
    assertEquals(400, Particles.neededFor(0.05).number(), 1e-9);
  }

  @Test
  void aMixerTestNeedsReadings() {
    assertThrows(IllegalArgumentException.class, () -> new MixerTest(List.of(1.0)));
    assertThrows(IllegalArgumentException.class, () -> new MixerTest(List.of(0.0, 0.0)));
    assertThrows(IllegalArgumentException.class, () -> new MixerTest(List.of(1.0, -1.0)));
    assertThrows(IllegalArgumentException.class, () -> new MixerTest(List.of(1.0, Double.NaN)));
  }

  @ParameterizedTest(name = "{0} particles: {1} %")
  @DisplayName("particle rule: 400 give 5 %, 100 give 10 %, 10 000 give 1 % (Zinn, UC Davis)")
  @CsvSource({"400, 5", "100, 10", "10000, 1"})
  void particles(double number, double percent) {
    assertEquals(percent / 100, new Particles(number).leastVariation(), 1e-12);
    assertEquals(number, Particles.neededFor(percent / 100).number(), 1e-6);
  }

  @Test
  @DisplayName("by hand: 1 g of feed with 8 mg/kg in grains of 2 µg holds 4 grains, CV 50 %")
  void particlesOfAMeal() {
    assertEquals(0.5, Particles.in(0.001, 8e-6, 2e-9).leastVariation(), 1e-12);
  }

  @Test
  @DisplayName("chance itself, simulated with a fixed seed: 100 grains a meal vary by 10 %")
  void chance() {
    Random random = new Random(20261125);
    int meals = 20_000;
    int[] grains = new int[meals];
    for (int i = 0; i < meals * 100; i++) {
      grains[random.nextInt(meals)]++;
    }
    MixerTest test =
        new MixerTest(java.util.Arrays.stream(grains).mapToObj(it -> (double) it).toList());
    assertEquals(0.10, test.variation(), 0.002);
  }

  @Test
  @DisplayName("a ball of 100 µm at 2.7 kg/L weighs 1.41 µg; there and back")
  void balls() {
    double mass = Particles.massOfBall(0.1, 2.7);
    assertEquals(1.413717e-9, mass, 1e-14);
    assertEquals(0.1, Particles.diameterOfBall(mass, 2.7), 1e-12);
  }

  @Test
  @DisplayName("S319, all on No. 30 below No. 20 (595 and 841 µm): sqrt(595 x 841) µm, spread 1")
  void oneSieve() {
    assertEquals(Math.sqrt(0.595 * 0.841), ONE.meanDiameter(), 1e-12);
    assertEquals(0.707386, ONE.meanDiameter(), 1e-6);
    assertEquals(1, ONE.spread(), 1e-12);
  }

  @Test
  @DisplayName("S319, half on No. 30, half on No. 40, by hand: dgw 594.7 µm, spread 1.1896")
  void twoSieves() {
    double coarse = Math.sqrt(0.595 * 0.841);
    double fine = Math.sqrt(0.420 * 0.595);
    assertEquals(Math.sqrt(coarse * fine), TWO.meanDiameter(), 1e-12);
    assertEquals(0.59466, TWO.meanDiameter(), 1e-5);
    assertEquals(Math.sqrt(coarse / fine), TWO.spread(), 1e-12);
    assertEquals(1.18957, TWO.spread(), 1e-5);
  }

  @Test
  @DisplayName("S319: the pan lies on 37 µm, above the coarsest sieve the series goes on by √2")
  void endsOfTheStack() {
    SieveAnalysis pan = new SieveAnalysis(List.of(new Fraction(0.053, 0)), 10);
    assertEquals(Math.sqrt(0.037 * 0.053), pan.meanDiameter(), 1e-12);
    SieveAnalysis top = new SieveAnalysis(List.of(new Fraction(4.76, 10)), 0);
    assertEquals(4.76 * Math.pow(2, 0.25), top.meanDiameter(), 1e-12);
  }

  @Test
  @DisplayName("S319: twice the weights, or the sieves in another order, change nothing")
  void invariants() {
    List<Fraction> rows =
        List.of(new Fraction(0.42, 31), new Fraction(0.841, 3), new Fraction(0.595, 20));
    SieveAnalysis once = new SieveAnalysis(rows, 7);
    SieveAnalysis twice =
        new SieveAnalysis(
            rows.stream().map(it -> new Fraction(it.opening(), it.mass() * 2)).toList(), 14);
    assertEquals(once.meanDiameter(), twice.meanDiameter(), 1e-12);
    assertEquals(once.spread(), twice.spread(), 1e-12);
    assertEquals(61, once.recovered(), 1e-12);
    assertEquals(23.0 / 61, once.notThrough(0.595), 1e-12);
    assertEquals(0, once.notThrough(2), 1e-12);
  }

  @Test
  void aStackIsNotBornWrong() {
    Stream.<org.junit.jupiter.api.function.Executable>of(
            () -> new SieveAnalysis(List.of(), 1),
            () -> new SieveAnalysis(List.of(new Fraction(1, 0)), 0),
            () -> new SieveAnalysis(List.of(new Fraction(1, 2), new Fraction(1, 3)), 0),
            () -> new Fraction(0, 1),
            () -> new Fraction(1, -1))
        .forEach(it -> assertThrows(IllegalArgumentException.class, it));
  }

  @Test
  @DisplayName("durability is what stays on the screen: 482.5 g of 500 g are 96.5 %")
  void durability() {
    assertEquals(0.965, new Durability(0.5, 0.4825).share(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new Durability(0.5, 0.51));
    assertThrows(IllegalArgumentException.class, () -> new Durability(0, 0));
  }
}
