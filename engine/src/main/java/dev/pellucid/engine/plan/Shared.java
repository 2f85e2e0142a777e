package dev.pellucid.engine.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares a total among lines so that the rounded weights add up to it: each is cut down to the step
 * below, and the steps left over go to the lines that were cut most (the method of largest
 * remainders, as seats are shared out by votes). No line is off by more than one step unless the
 * total itself is.
 */
final class Shared {
  private static final MathContext READABLE = new MathContext(15, RoundingMode.HALF_EVEN);

  private Shared() {}

  /**
   * @param exact kg of each line
   * @param total what the weights must come to
   */
  static List<Mass> out(List<Double> exact, Mass total) {
    int decimals = total.kg().scale();
    List<BigDecimal> readable =
        exact.stream().map(kg -> new BigDecimal(kg).round(READABLE)).toList();
    List<Mass> weights = new ArrayList<>();
    readable.forEach(kg -> weights.add(new Mass(kg.setScale(decimals, RoundingMode.FLOOR))));
    Mass left = total.minus(Mass.sum(weights.stream(), decimals));
    if (weights.isEmpty() || left.isZero()) {
      return weights;
    }
    Comparator<Integer> most =
        Comparator.comparing(i -> readable.get(i).subtract(weights.get(i).kg()));
    List<Integer> order =
        IntStream.range(0, weights.size())
            .boxed()
            .sorted(left.isNegative() ? most : most.reversed())
            .toList();
    Mass step = Mass.step(decimals);
    for (int turn = 0; !left.isZero(); turn++) {
      int line = order.get(turn % order.size());
      boolean back = left.isNegative();
      weights.set(line, back ? weights.get(line).minus(step) : weights.get(line).plus(step));
      left = back ? left.plus(step) : left.minus(step);
    }
    return weights;
  }
}
