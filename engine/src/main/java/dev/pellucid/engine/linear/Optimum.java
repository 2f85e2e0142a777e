package dev.pellucid.engine.linear;

import java.util.function.Function;

/**
 * The values of least cost, and what keeping each bound costs. Where whole multiples or nothing at
 * all were to be chosen, the prices are those of the program with these choices made.
 */
public final class Optimum implements Outcome {
  private final double cost;
  private final double[] values;
  private final double[] prices;
  private final double[] boundPrices;
  private final double gap;
  private final boolean integer;

  Optimum(
      double cost,
      double[] values,
      double[] prices,
      double[] boundPrices,
      double gap,
      boolean integer) {
    this.cost = cost;
    this.values = values.clone();
    this.prices = prices.clone();
    this.boundPrices = boundPrices.clone();
    this.gap = gap;
    this.integer = integer;
  }

  /** The same, where choices led to it. */
  Optimum chosen() {
    return new Optimum(cost, values, prices, boundPrices, gap, true);
  }

  public double cost() {
    return cost;
  }

  public double value(int variable) {
    return values[variable];
  }

  public double[] values() {
    return values.clone();
  }

  /**
   * By how much the least cost rises when the binding bound of a constraint is raised by one: zero
   * or more where its low binds, zero or less where its high does, zero where none does.
   */
  public double price(int constraint) {
    return prices[constraint];
  }

  public double[] prices() {
    return prices.clone();
  }

  /** The same for the bounds of a variable. */
  public double boundPrice(int variable) {
    return boundPrices[variable];
  }

  public double[] boundPrices() {
    return boundPrices.clone();
  }

  /**
   * How far the answer is from proven: the gap between its cost and the cost that its prices show
   * to be the least, as a part of the cost, or the residual of a price that no bound can have,
   * whichever is more. It is worked out from values, prices and the program alone.
   */
  public double gap() {
    return gap;
  }

  /** Whether whole multiples or nothing at all were chosen. */
  public boolean isInteger() {
    return integer;
  }

  @Override
  public <R> R byKind(
      Function<? super Optimum, ? extends R> optimum,
      Function<? super Infeasible, ? extends R> infeasible,
      Function<? super Unbounded, ? extends R> unbounded,
      Function<? super Failed, ? extends R> failed) {
    return optimum.apply(this);
  }
}
