package dev.pellucid.engine.compute;

import java.util.Optional;

/** The balance at each end. */
public record Balances(Balance expected, Balance poorest, Balance richest) {
  public Balance at(End end) {
    return switch (end) {
      case EXPECTED -> expected;
      case POOREST -> poorest;
      case RICHEST -> richest;
    };
  }

  /** What stands in the way of any figure: the first of expected, poorest, richest. */
  public Optional<Obstacle> obstacle() {
    return expected.obstacle().or(poorest::obstacle).or(richest::obstacle);
  }
}
