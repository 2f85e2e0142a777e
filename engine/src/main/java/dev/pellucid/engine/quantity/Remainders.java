package dev.pellucid.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares a total among lines so that the rounded figures add up to it: each is cut down to the step
 * below, and the steps left over go to the lines that were cut most (the method of largest
 * remainders, as seats are shared out by votes). No line is off by more than one step unless the
 * total itself is.
 */
public final class Remainders {
  private static final MathContext READABLE = new MathContext(15, RoundingMode.HALF_EVEN);

  private Remainders() {}

  /**
   * Figures with as many decimals as the total.
   *
   * @param exact what each line comes to
   * @param total what the figures must come to
   */
  public static List<BigDecimal> out(List<Double> exact, BigDecimal total) {
    int decimals = total.scale();
    List<BigDecimal> readable =
        exact.stream().map(value -> new BigDecimal(value).round(READABLE)).toList();
    List<BigDecimal> figures = new ArrayList<>();
    readable.forEach(value -> figures.add(value.setScale(decimals, RoundingMode.FLOOR)));
    BigDecimal left = total.subtract(figures.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    if (figures.isEmpty() || left.signum() == 0) {
      return figures;
    }
    Comparator<Integer> most = Comparator.comparing(i -> readable.get(i).subtract(figures.get(i)));
    List<Integer> order =
        IntStream.range(0, figures.size())
            .boxed()
            .sorted(left.signum() < 0 ? most : most.reversed())
            .toList();
    BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
    for (int turn = 0; left.signum() != 0; turn++) {
      int line = order.get(turn % order.size());
      BigDecimal move = left.signum() < 0 ? step.negate() : step;
      figures.set(line, figures.get(line).add(move));
      left = left.subtract(move);
    }
    return figures;
  }
}
