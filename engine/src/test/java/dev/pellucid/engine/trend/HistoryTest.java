package dev.pellucid.engine.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.trend.Course.Around;
import dev.pellucid.engine.trend.Course.Scale;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Batches in their order, and what stands for the centre and the spread of a course. */
class HistoryTest {

  @Test
  void theOrderIsOfDaysAndSerialsAndNotOfFiles() {
    List<MeasuredBatch> batches = new ArrayList<>();
    for (int day = 0; day < 5; day++) {
      batches.add(Made.batch(day, 1));
      batches.add(Made.batch(day, 2));
      batches.add(Made.batch(day, 10));
    }
    List<MeasuredBatch> mixed = new ArrayList<>(batches);
    Collections.shuffle(mixed, new Random(3));
    assertEquals(batches, History.of(mixed).batches());
  }

  @Test
  void aBatchWithoutAResultKeepsItsPlaceAndBreaksNoRun() {
    List<MeasuredBatch> batches = new ArrayList<>(Made.inSpreads(1, 1, 1, 1, 1, 1, 1, 1));
    List<MeasuredBatch> between = new ArrayList<>();
    for (int i = 0; i < batches.size(); i++) {
      between.add(Made.batch(2 * i, 1, batches.get(i).figures().get(0)));
      between.add(Made.batch(2 * i + 1, 1));
    }
    Course course = Made.course(between);
    assertEquals(
        List.of(0, 2, 4, 6, 8, 10, 12, 14), course.spots().stream().map(Spot::place).toList());
    assertEquals(List.of(new Run(RunRule.EIGHT_ON_ONE_SIDE, 0, 7, true)), course.now());
  }

  @Test
  void aSlipIsLeftOut() {
    List<MeasuredBatch> batches = new ArrayList<>(Made.inSpreads(0.5, -0.5));
    Measured slip = Made.measured(3.4, OptionalDouble.of(0.34), OptionalDouble.of(0.01)).asSlip();
    batches.add(Made.batch(2, 1, slip));
    Course course = Made.course(batches);
    assertEquals(2, course.spots().size());
    assertEquals(1, course.left().size());
    assertEquals(List.of(), course.runs());
  }

  /** Each is held against what was expected of itself. */
  @Test
  void aChangedRecipeMakesNoRun() {
    List<MeasuredBatch> batches = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      double expected = i < 10 ? 0.34 : 0.30;
      double off = (i % 2 == 0 ? 1 : -1) * 0.004;
      batches.add(
          Made.batch(
              i,
              1,
              Made.measured(expected + off, OptionalDouble.of(expected), OptionalDouble.of(0.01))));
    }
    assertEquals(List.of(), Made.course(batches).runs());
  }

  @Test
  void whereNothingIsExpectedTheMeanStandsForItFromTenOn() {
    double[] nine = {9, 11, 10, 12, 8, 10, 9, 11, 10};
    Course few = Made.course(Made.bare(nine));
    assertEquals(Scale.NOT_KNOWN, few.scale());
    assertTrue(few.spots().stream().allMatch(spot -> spot.spreads().isEmpty()));
    double[] ten = {9, 11, 10, 12, 8, 10, 9, 11, 10, 10};
    Course course = Made.course(Made.bare(ten));
    assertEquals(Scale.OWN, course.scale());
    assertEquals(Around.OWN_MEAN, course.around());
    assertEquals(10, course.spots().get(0).centre(), 1e-12);
    // Moving ranges 2, 1, 2, 4, 2, 1, 2, 1, 0: their mean is 15/9.
    assertEquals(-1 / (15.0 / 9 / 1.128), course.spots().get(0).spreads().orElseThrow(), 1e-12);
  }

  @Test
  void ofAMeanOfFewNothingIsSaid() {
    assertEquals(List.of(), Made.course(Made.bare(1, 2, 3, 4, 5, 6, 7, 8)).runs());
  }

  /** Then nobody knows how far is far, and on which side a figure lies is known all the same. */
  @Test
  void withoutASpreadARunIsToldAllTheSame() {
    List<MeasuredBatch> batches = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      batches.add(
          Made.batch(i, 1, Made.measured(0.35, OptionalDouble.of(0.34), OptionalDouble.empty())));
    }
    Course course = Made.course(batches);
    assertEquals(Scale.NOT_KNOWN, course.scale());
    assertEquals(List.of(new Run(RunRule.EIGHT_ON_ONE_SIDE, 0, 7, true)), course.now());
  }

  @Test
  void figuresThatNeverDifferHaveNoSpread() {
    double[] same = new double[12];
    java.util.Arrays.fill(same, 0.97);
    Course course = Made.course(Made.bare(same));
    assertEquals(Scale.NOT_KNOWN, course.scale());
    assertEquals(List.of(), course.runs());
  }

  @Test
  void kgAndMoneyAddUp() {
    List<MeasuredBatch> batches = new ArrayList<>();
    Random random = new Random(5);
    double beyond = 0;
    double money = 0;
    for (int i = 0; i < 30; i++) {
      double finished = 90 + random.nextDouble();
      double bagged = 87 + random.nextDouble();
      OptionalDouble price = i % 3 == 0 ? OptionalDouble.empty() : OptionalDouble.of(0.6);
      batches.add(
          new MeasuredBatch(
              "A-1",
              "A-1-" + i,
              Made.FIRST.plusDays(i),
              1,
              "",
              false,
              List.of(),
              Optional.of(new BatchYield(89, finished, finished * 0.98, bagged, 0.5, price))));
      beyond += finished * 0.98 - bagged;
      money += price.isPresent() ? (finished * 0.98 - bagged) * 0.6 : 0;
    }
    YieldTotals.Step last = History.of(batches).yields().last().orElseThrow();
    assertEquals(beyond, last.all().beyond(), 1e-9);
    assertEquals(money, last.money(), 1e-9);
    assertEquals(10, History.of(batches).yields().unpriced());
    assertEquals(30 * 89, last.all().planned(), 1e-9);
  }
}
