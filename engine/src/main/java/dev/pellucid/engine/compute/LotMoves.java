package dev.pellucid.engine.compute;

import java.util.BitSet;
import java.util.List;

/**
 * How far one standard deviation of each content that an ingredient tells moves a sum of nutrients,
 * in the amounts of 100 kg of recipe; with a sign, for it may enter the sum on two ways.
 */
final class LotMoves {
  private final ComputedFeed feed;
  private final double[] byContent;
  private final BitSet touched = new BitSet();

  LotMoves(ComputedFeed feed) {
    this.feed = feed;
    this.byContent = new double[feed.nutrients().count()];
  }

  /** Forgets the ingredient before, and takes in all rows of one. */
  void take(List<Row> rows, int[] nutrients, Scenario content, Scenario mass) {
    for (int told = next(0); told >= 0; told = next(told + 1)) {
      byContent[told] = 0;
    }
    touched.clear();
    for (Row row : rows) {
      for (int nutrient : nutrients) {
        if (!feed.nutrients().isMoisture(nutrient) || feed.keepsItsWater(row)) {
          take(row, nutrient, content, mass);
        }
      }
    }
  }

  private void take(Row row, int nutrient, Scenario content, Scenario mass) {
    for (Composition.Derived.Term term : row.composition().net().get(nutrient)) {
      int told = term.nutrient();
      touched.set(told);
      byContent[told] += term.factor() * row.told(content, mass, told);
    }
  }

  /** The first content from a place on that moves the sum; below zero where there is no more. */
  int next(int from) {
    return touched.nextSetBit(from);
  }

  double taken(int content) {
    return byContent[content];
  }
}
