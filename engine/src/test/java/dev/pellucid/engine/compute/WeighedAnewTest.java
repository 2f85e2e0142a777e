package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.outside.Cooked;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A feed with a premix, overage, a dryer, a coat and a store, of which the rows alone tell what it
 * would be by other weights.
 */
class WeighedAnewTest {
  private final Cooked pantry =
      new Cooked()
          .premix(
              "VC",
              """
              premix VC
                dose 10 g/kg
              mix
                ascorbyl-phosphate  10 %
                maize               rest
              overage
                ascorbyl-phosphate  4 %  for handling
              """);

  private ComputedFeed feed(double soybean, double oil, double kept) {
    return pantry.feed(
        """
          batch 500 kg weighed
        mix
          fish-meal        20 %
          soybean-meal     SOY %
          VC               1 %
          salt             0.4 %
          maize            rest
        coat
          fish-oil         OIL %
        overage
          salt             10 %  for handling
          VC               5 %   for handling
        process
          add-water  on-mix       20 %
          extrude    temperature  110 °C
          dry        temperature  70 °C
          dry        moisture     9 %  accept 8 to 10 %
          coat       temperature  30 °C
          store      shelf-life   60 d
          store      temperature  STORE °C
        """
            .replace("SOY", Double.toString(soybean))
            .replace("OIL", Double.toString(oil))
            .replace("STORE", Double.toString(kept)));
  }

  private static void same(ComputedFeed expected, ComputedFeed found) {
    assertEquals(masses(expected), masses(found));
    assertEquals(expected.costPer100(), found.costPer100());
    assertEquals(expected.rows().size(), found.rows().size());
    for (int i = 0; i < expected.rows().size(); i++) {
      Row one = expected.rows().get(i);
      Row other = found.rows().get(i);
      assertEquals(one.finished(), other.finished());
      for (Scenario end : Scenario.values()) {
        assertEquals(one.kg(end), other.kg(end));
        for (Nutrient nutrient : expected.nutrients().inOrder()) {
          assertEquals(one.amount(end, nutrient.index()), other.amount(end, nutrient.index()));
        }
      }
    }
  }

  private static List<Double> masses(ComputedFeed feed) {
    Balances all = feed.balances();
    return Stream.of(all.expected(), all.poorest(), all.richest(), all.richestLost())
        .flatMap(one -> Stream.of(one.mix(), one.coat(), one.kernel(), one.finished()))
        .toList();
  }

  /** Bit by bit as if the recipe had been written so. */
  @Test
  void otherWeightsAreAsIfWrittenSo() {
    ComputedFeed feed = feed(30, 3, 25);
    Random random = new Random(20261128);
    for (int i = 0; i < 20; i++) {
      ComputedFeed other = feed(10 + random.nextInt(30), 1 + random.nextInt(9), 25);
      same(other, feed.weighed(Weighing.of(other)).feed().orElseThrow());
    }
  }

  @Test
  void ofOneKgTimesTheKgIsTheRow() {
    ComputedFeed feed = feed(30, 3, 25);
    Weighing weighing = feed.weighing();
    for (Row row : feed.rows()) {
      double kg = weighing.inFeed().get(row.line().index());
      double richest = kg + weighing.onTop().get(row.line().index());
      Row one = row.ofOneKg();
      assertEquals(row.dryMatter(), one.dryMatter() * kg, 1e-12);
      assertEquals(row.finished(), one.finished() * kg, 1e-12);
      assertEquals(row.money(), one.money() * richest, 1e-12);
      for (Nutrient nutrient : feed.nutrients().inOrder()) {
        int index = nutrient.index();
        near(row.amount(Scenario.EXPECTED, index), one.amount(Scenario.EXPECTED, index) * kg);
        near(row.amount(Scenario.POOREST, index), one.amount(Scenario.POOREST, index) * kg);
        near(row.amount(Scenario.RICHEST, index), one.amount(Scenario.RICHEST, index) * richest);
      }
    }
  }

  private static void near(double expected, double found) {
    assertEquals(expected, found, 1e-12 * Math.max(1, Math.abs(expected)));
  }

  /** What one kg brings is enough to tell the amounts of any other weighing. */
  @Test
  void amountsOfAnotherWeighingFollowFromOneKg() {
    ComputedFeed feed = feed(30, 3, 25);
    ComputedFeed other = feed(17, 6, 25);
    for (Nutrient nutrient : feed.nutrients().inOrder()) {
      double reckoned = 0;
      double there = 0;
      for (int i = 0; i < feed.rows().size(); i++) {
        Row row = feed.rows().get(i);
        double kg = other.weighing().inFeed().get(row.line().index());
        reckoned += row.ofOneKg().amount(Scenario.POOREST, nutrient.index()) * kg;
        there += other.rows().get(i).amount(Scenario.POOREST, nutrient.index());
      }
      near(there, reckoned);
    }
  }

  @Test
  void theRowsTogetherAreTheFinishedFeed() {
    ComputedFeed feed = feed(30, 3, 25);
    double finished = feed.rows().stream().mapToDouble(Row::finished).sum();
    assertEquals(feed.balances().expected().finished(), finished, 1e-12);
    int premix = 2;
    List<Row> rows = feed.rows(feed.recipe().lines().get(premix));
    assertEquals(
        List.of(List.of("VC", "ascorbyl-phosphate"), List.of("VC", "maize")),
        rows.stream().map(Row::path).toList());
  }

  /** Only what is weighed on top of a line is lost; a premix keeps its own. */
  @Test
  void withOverageLost() {
    ComputedFeed feed = feed(30, 3, 25);
    ComputedFeed lost = feed.withOverageLost().orElseThrow();
    assertEquals(List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0), lost.weighing().onTop());
    for (int i = 0; i < feed.rows().size(); i++) {
      assertEquals(feed.rows().get(i).kg(), lost.rows().get(i).kg());
    }
    Row salt = lost.rows(feed.recipe().lines().get(3)).get(0);
    assertEquals(salt.kg(), salt.kgRichest());
    Row vitamin = lost.rows(feed.recipe().lines().get(2)).get(0);
    assertTrue(vitamin.kgRichest() > vitamin.kg());
  }

  /** A store warmer than any row of the table: nothing is left at the poorest end, or all. */
  @Test
  void asIfGapsKeptAll() {
    ComputedFeed gap = feed(30, 3, 45);
    int vitamin = gap.nutrients().named("vitamin-c").orElseThrow().index();
    assertFalse(gap.retentionGaps().isEmpty());
    assertEquals(0, gap.content(Scenario.POOREST, vitamin));
    ComputedFeed kept = gap.asIfGapsKeptAll();
    assertTrue(kept.content(Scenario.POOREST, vitamin) > 0);
    assertEquals(gap.balances(), kept.balances());
    assertEquals(gap.content(Scenario.RICHEST, vitamin), kept.content(Scenario.RICHEST, vitamin));
    ComputedFeed without = feed(30, 3, 25);
    assertTrue(without.retentionGaps().isEmpty());
    same(without, without.asIfGapsKeptAll());
  }
}
