package dev.pellucid.engine.weighing;

import dev.pellucid.engine.resolve.Line;
import java.util.Optional;

/**
 * One line in one load, or in one round of the coater; kg.
 *
 * @param target what the recipe asks for, overage of both kinds included
 * @param taken what of it goes in with dilutions of other lines
 * @param placing where the rest of the target is weighed
 * @param dilution how it goes in where it is too little to weigh, and that can be fixed
 */
public record WeighingLine(
    Line line, double target, double taken, Placing placing, Optional<Dilution> dilution) {

  /** kg that go in: as weighed; the target where it cannot be weighed at all. */
  public double actual() {
    if (dilution.isPresent()) {
      return dilution.get().reaches();
    }
    Optional<Weight> placed = placing.placed();
    return placed.isPresent() ? placed.get().total() + taken : target;
  }

  /** Whether it can be weighed, itself or diluted. */
  public boolean weighable() {
    return placing.placed().isPresent() || dilution.isPresent();
  }

  /** What goes in as a part of what should. */
  double ratio() {
    return target == 0 ? 1 : actual() / target;
  }
}
