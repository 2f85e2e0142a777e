package dev.pellucid.engine.linear;

import java.util.function.Function;

/**
 * The solver gave no answer, or one that does not prove.
 *
 * @param why what does not hold, in words
 */
public record Failed(String why) implements Outcome {
  @Override
  public <R> R byKind(
      Function<? super Optimum, ? extends R> optimum,
      Function<? super Infeasible, ? extends R> infeasible,
      Function<? super Unbounded, ? extends R> unbounded,
      Function<? super Failed, ? extends R> failed) {
    return failed.apply(this);
  }
}
