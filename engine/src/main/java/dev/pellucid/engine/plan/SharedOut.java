package dev.pellucid.engine.plan;

import dev.pellucid.engine.quantity.Remainders;
import java.util.List;

/** Shares a total mass among lines so that the weights as shown add up to it. */
final class SharedOut {
  private SharedOut() {}

  /**
   * @param exact kg of each line
   * @param total what the weights must come to
   */
  static List<Mass> masses(List<Double> exact, Mass total) {
    return Remainders.out(exact, total.kg()).stream().map(Mass::new).toList();
  }
}
