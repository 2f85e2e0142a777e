package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.data.Practice.BoundOf;
import java.util.function.ToDoubleFunction;

/**
 * A figure that practice bounds and that hangs on the shares of lines: starch and fat in the mix
 * before the die, oil on the kernel, feed that is worked in again.
 *
 * @param bound which bound of practice
 * @param of what it is a part of
 * @param perKg what one kg of a row brings to it
 */
public record PracticeFigure(BoundOf bound, Whole of, ToDoubleFunction<Row> perKg) {
  /** What a figure is a part of. */
  public enum Whole {
    /** What goes through the mixer, before water. */
    MIX,
    /** What is there when the coat goes on. */
    KERNEL
  }

  /** What a row brings to it, in kg per 100 kg of recipe. */
  public double amount(Row row) {
    return perKg.applyAsDouble(row) * row.kg();
  }

  /** A part of one. */
  public double figure(ComputedFeed feed) {
    double amount = 0;
    for (Row row : feed.rows()) {
      amount += amount(row);
    }
    return amount
        / switch (of) {
          case MIX -> feed.balances().expected().mix();
          case KERNEL -> feed.balances().expected().kernel();
        };
  }

  /** By how much it is above a bound, multiplied out so that it is a sum over lines. */
  public Slope above(Slopes feed, double low) {
    return feed.kg(perKg).minus(low, whole(feed));
  }

  private Slope whole(Slopes feed) {
    return switch (of) {
      case MIX -> feed.mix();
      case KERNEL -> feed.kernel();
    };
  }
}
