package dev.pellucid.engine.quantity;

/** A sum in which rounding does not pile up: what each step cuts off is carried over (Kahan). */
public final class Sum {
  private double sum;
  private double over;

  /** Adds a figure. */
  public void add(double figure) {
    double wanted = figure - over;
    double grown = sum + wanted;
    over = grown - sum - wanted;
    sum = grown;
  }

  /** All that was added. */
  public double total() {
    return sum - over;
  }
}
