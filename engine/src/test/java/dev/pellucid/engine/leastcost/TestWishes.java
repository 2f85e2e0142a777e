package dev.pellucid.engine.leastcost;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Wishes of tests. */
final class TestWishes {
  private TestWishes() {}

  static Wishes moving(double points) {
    return new Wishes(
        Set.of(),
        List.of(),
        Set.of(),
        OptionalDouble.of(points),
        0,
        false,
        OptionalDouble.empty(),
        false,
        false);
  }
}
