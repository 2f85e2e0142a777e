package dev.pellucid.engine.linear;

import java.util.function.Function;

/**
 * Nothing keeps all constraints and bounds, which is shown by the least by which they are missed.
 */
public record Infeasible() implements Outcome {
  @Override
  public <R> R byKind(
      Function<? super Optimum, ? extends R> optimum,
      Function<? super Infeasible, ? extends R> infeasible,
      Function<? super Unbounded, ? extends R> unbounded,
      Function<? super Failed, ? extends R> failed) {
    return infeasible.apply(this);
  }
}
