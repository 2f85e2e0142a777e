package dev.pellucid.engine.weighing;

import dev.pellucid.engine.resolve.Line;
import java.util.List;

/**
 * How a line that is too little to weigh gets into the loads: some of it is blended with a carrier,
 * step by step, until what a load needs can be weighed. The carrier is taken out of a line of the
 * recipe, so that nothing is added to the feed.
 *
 * @param carrier the line that gives the diluent
 * @param steps in order; each takes of what the one before made
 * @param take of the last step's make, into each load
 * @param strength kg of the line in a kg of what the last step makes, as weighed
 */
public record Dilution(Line carrier, List<Step> steps, Weight take, double strength) {
  public Dilution {
    steps = List.copyOf(steps);
    if (steps.isEmpty() || !(strength > 0 && strength < 1)) {
      throw new IllegalArgumentException("no dilution");
    }
  }

  /** One blending. */
  public record Step(Weight strong, Weight carrier) {
    /** kg that it makes. */
    public double makes() {
      return strong.total() + carrier.total();
    }
  }

  /** kg of the line that each load gets. */
  public double reaches() {
    return take.total() * strength;
  }

  /** kg of carrier that each load gets with it. */
  public double carried() {
    return take.total() - reaches();
  }
}
