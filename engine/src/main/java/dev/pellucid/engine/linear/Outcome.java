package dev.pellucid.engine.linear;

import java.util.Optional;
import java.util.function.Function;

/** What came of solving a program. */
public sealed interface Outcome permits Optimum, Infeasible, Unbounded, Failed {
  <R> R byKind(
      Function<? super Optimum, ? extends R> optimum,
      Function<? super Infeasible, ? extends R> infeasible,
      Function<? super Unbounded, ? extends R> unbounded,
      Function<? super Failed, ? extends R> failed);

  /** The optimum, where there is one that is proven. */
  default Optional<Optimum> optimum() {
    return byKind(
        Optional::of, none -> Optional.empty(), none -> Optional.empty(), none -> Optional.empty());
  }

  /** Whether it is shown that nothing keeps all constraints. */
  default boolean isInfeasible() {
    return byKind(found -> false, none -> true, endless -> false, failed -> false);
  }
}
