package dev.pellucid.engine.linear;

import java.util.function.Function;

/** The cost falls without end. */
public record Unbounded() implements Outcome {
  @Override
  public <R> R byKind(
      Function<? super Optimum, ? extends R> optimum,
      Function<? super Infeasible, ? extends R> infeasible,
      Function<? super Unbounded, ? extends R> unbounded,
      Function<? super Failed, ? extends R> failed) {
    return unbounded.apply(this);
  }
}
