package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Spreads of derived figures against sums done by hand. Contents are invented, the sums are not.
 */
class SpreadByHandTest {
  /** Gross energy in MJ/kg: 23.6, 39.5, 17.2 and 17.2 of protein, fat, NFE and fibre. */
  private static final String PARTS =
      "moisture: 10 ± 1.0 %, crude-protein: 40 ± 1.2 %, crude-fat: 8 ± 0.5 %, crude-fibre: 4 ± 0.4 %,"
          + " crude-ash: 6 ± 0.3 %, lysine: 2.5 ± 0.1 %, methionine: 0.6 ± 0.03 %, cystine: 0.5 ± 0.02"
          + " %";

  @Test
  @DisplayName("protein enters gross energy with 6.4, fat with 22.3, water and ash with 17.2")
  void grossEnergy() {
    ComputedFeed feed = new Cooked().ingredient("meal", PARTS).feed("mix\n  meal 100 %\n");
    double byHand = 6.4 * 0.012 + 22.3 * 0.005 + 17.2 * (0.010 + 0.003);
    assertEquals(byHand, deviation(feed, "gross-energy"), 1e-12);
  }

  @Test
  @DisplayName("what is in a sum and taken off in it again does not move it")
  void protein() {
    ComputedFeed feed = new Cooked().ingredient("meal", PARTS).feed("mix\n  meal 100 %\n");
    double byHand = 0.010 + 0.005 + 0.004 + 0.003;
    assertEquals(byHand, deviation(feed, "crude-protein", "nitrogen-free-extract"), 1e-12);
  }

  @Test
  @DisplayName("two ingredients move apart, the contents of one together")
  void apart() {
    ComputedFeed feed =
        new Cooked()
            .ingredient("meal", PARTS)
            .ingredient("bran", "moisture: 12 %, methionine: 0.2 ± 0.02 %, cystine: 0.3 ± 0.01 %")
            .feed("mix\n  meal 60 %\n  bran 40 %\n");
    double byHand = Math.hypot(0.6 * (0.0003 + 0.0002), 0.4 * (0.0002 + 0.0001));
    assertEquals(byHand, deviation(feed, "methionine", "cystine"), 1e-12);
  }

  @Test
  @DisplayName("the two sides of a ratio move apart within one ingredient")
  void ratio() {
    ComputedFeed feed = new Cooked().ingredient("meal", PARTS).feed("mix\n  meal 100 %\n");
    double mean = 2.5 / 40;
    double byHand = mean * Math.hypot(0.1 / 2.5, 1.2 / 40);
    Subject ratio =
        new Subject.Ratio(
            sum(feed, "lysine"), sum(feed, "crude-protein"), Subject.RatioKind.PLAIN, "ratio");
    assertEquals(byHand, deviation(feed, ratio), 1e-12);
  }

  /** Methionine : (methionine + cystine) moves with methionine by 1 - ratio, not by 1. */
  @Test
  @DisplayName("what is on both sides of a ratio counts once")
  void onBothSides() {
    ComputedFeed feed = new Cooked().ingredient("meal", PARTS).feed("mix\n  meal 100 %\n");
    double mean = 0.6 / 1.1;
    double byHand = Math.hypot((1 - mean) * 0.03, mean * 0.02) / 1.1;
    Subject ratio =
        new Subject.Ratio(
            sum(feed, "methionine"),
            sum(feed, "methionine", "cystine"),
            Subject.RatioKind.PLAIN,
            "ratio");
    assertEquals(byHand, deviation(feed, ratio), 1e-12);
  }

  @Test
  @DisplayName("one ingredient on two lines is one lot")
  void oneLot() {
    ComputedFeed feed =
        new Cooked()
            .ingredient("meal", PARTS)
            .premix("PX", "premix PX\n  dose 10 g/kg\nmix\n  meal 100 %\n")
            .feed("mix\n  meal 99 %\n  PX 1 %\n");
    assertEquals(0.012, deviation(feed, "crude-protein"), 1e-12);
  }

  private static Subject.Nutrients sum(ComputedFeed feed, String... names) {
    return new Subject.Nutrients(
        Stream.of(names).map(name -> feed.nutrients().named(name).orElseThrow()).toList(),
        List.of(names).toString());
  }

  private static double deviation(ComputedFeed feed, String... names) {
    return deviation(feed, sum(feed, names));
  }

  private static double deviation(ComputedFeed feed, Subject subject) {
    return new Readings(feed).varying(subject, new Basis.AsFed(), Scenario.EXPECTED).deviation();
  }
}
