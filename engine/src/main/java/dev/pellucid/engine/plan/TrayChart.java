package dev.pellucid.engine.plan;

import java.util.List;

/**
 * What a tray of wet feed weighs when it is dry enough: {@code m0 (1 - a) / (1 - b)}, since dry
 * matter stays on the tray.
 *
 * @param loaded net kg of wet feed on the tray, {@code m0}
 * @param ofThePlant whether the plant tells the load; else it is a sample of 1 kg
 * @param targets moistures {@code b}, the wettest first; shares
 * @param aim the one of them that is aimed at
 * @param rows one for each moisture before
 */
public record TrayChart(
    double loaded, boolean ofThePlant, List<Double> targets, double aim, List<Row> rows) {
  private static final double POINT = 0.01;
  private static final double TENTHS_OF_A_POINT = 1000;

  public TrayChart {
    targets = List.copyOf(targets);
    rows = List.copyOf(rows);
  }

  /**
   * The chart for one moisture before.
   *
   * @param before the moisture {@code a} as loaded, a share
   * @param weights net kg at each target
   */
  public record Row(double before, List<Double> weights) {
    public Row {
      weights = List.copyOf(weights);
    }
  }

  /**
   * For the moisture expected before drying, to the tenth of a point that a hand can measure, and
   * one point either side.
   */
  static TrayChart of(
      double loaded, boolean ofThePlant, double before, List<Double> targets, double aim) {
    double near = Math.rint(before * TENTHS_OF_A_POINT) / TENTHS_OF_A_POINT;
    List<Row> rows =
        List.of(near - POINT, near, near + POINT).stream()
            .filter(a -> a > aim && a < 1)
            .map(a -> new Row(a, targets.stream().map(b -> weight(loaded, a, b)).toList()))
            .toList();
    return new TrayChart(loaded, ofThePlant, targets, aim, rows);
  }

  /** Net kg of a tray when its moisture has come down from one share to another. */
  public static double weight(double loaded, double before, double after) {
    return loaded * (1 - before) / (1 - after);
  }
}
