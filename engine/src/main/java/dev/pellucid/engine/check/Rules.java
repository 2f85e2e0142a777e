package dev.pellucid.engine.check;

import dev.pellucid.syntax.Bound;
import java.util.List;

/** Every rule, in the order in which they look. */
public final class Rules {
  public static final List<Rule> ALL =
      List.of(
          new Obstacles(),
          new OutsideWithin(),
          new BrokenLimit("below-minimum", Bound.Side.MIN),
          new BrokenLimit("above-maximum", Bound.Side.MAX));

  private Rules() {}
}
