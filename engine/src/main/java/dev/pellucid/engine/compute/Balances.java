package dev.pellucid.engine.compute;

import java.util.Optional;

/**
 * The balance at each end.
 *
 * @param richestLost at the richest end with all handling overage lost; without any overage the
 *     same as {@code richest}
 * @param losesOverage whether there is such overage
 */
public record Balances(
    Balance expected, Balance poorest, Balance richest, Balance richestLost, boolean losesOverage) {
  public Balance at(Scenario end) {
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
