package dev.pellucid.engine.floor;

import dev.pellucid.engine.larder.Scale;

/** Where an amount goes to be weighed, or why it cannot be. */
public sealed interface Placing {
  /** It is weighed. */
  record Placed(Weight weight) implements Placing {}

  /**
   * The finest scale that carries it is sensible only from more.
   *
   * @param least kg
   */
  record TooLittle(Scale scale, double least) implements Placing {}

  /** Even the scale that carries most would need too many weighings. */
  record TooMuch(Scale scale, long weighings) implements Placing {}
}
