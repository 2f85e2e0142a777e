package dev.pellucid.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ClosenessTest {
  private static final double WITHOUT_END = Double.POSITIVE_INFINITY;

  @Test
  void theNoiseOfReckoningIsNoDifference() {
    assertTrue(Closeness.same(0.1 + 0.2, 0.3));
    assertTrue(Closeness.isAtLeast(0.3 - 1e-12, 0.3));
    assertTrue(Closeness.isAtMost(0.3 + 1e-12, 0.3));
    assertFalse(Closeness.isAbove(0.3 + 1e-12, 0.3));
    assertFalse(Closeness.isBelow(0.3 - 1e-12, 0.3));
  }

  @Test
  void whatCanBeWrittenIs() {
    assertFalse(Closeness.same(0.3, 0.300001));
    assertTrue(Closeness.isAbove(0.300001, 0.3));
    assertTrue(Closeness.isBelow(0.299999, 0.3));
    assertFalse(Closeness.isAtMost(0.300001, 0.3));
    assertFalse(Closeness.isAtLeast(0.299999, 0.3));
  }

  @Test
  void aBoundBelowZeroGivesWayToBothSidesToo() {
    assertTrue(Closeness.isAtLeast(-0.3 - 1e-12, -0.3));
    assertTrue(Closeness.isAtMost(-0.3 + 1e-12, -0.3));
  }

  @Test
  void nothingIsCloseToZero() {
    assertTrue(Closeness.isAbove(1e-12, 0));
    assertFalse(Closeness.same(1e-12, 0));
    assertTrue(Closeness.same(0.0, -0.0));
  }

  @Test
  void aFigureWithoutEndIsCloseToItselfAlone() {
    assertTrue(Closeness.same(WITHOUT_END, WITHOUT_END));
    assertFalse(Closeness.same(WITHOUT_END, 1e300));
    assertFalse(Closeness.same(1e300, WITHOUT_END));
    assertTrue(Closeness.isAtLeast(WITHOUT_END, WITHOUT_END));
    assertFalse(Closeness.isAbove(1e300, WITHOUT_END));
  }

  @Test
  void wholeNumbersAreReachedInSpiteOfNoise() {
    double three = 3 - 1e-12;
    assertEquals(3, Closeness.down(three));
    assertEquals(3, Closeness.up(3 + 1e-12));
    assertEquals(4, Closeness.up(3.001));
    assertEquals(2, Closeness.down(2.999));
  }
}
