package dev.pellucid.engine.judge;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is worked out when it is first asked for, and never again; for one thread. */
public final class Once<T> implements Supplier<T> {
  private final Supplier<T> source;
  private @Nullable T value;

  /** For what a source makes. */
  public Once(Supplier<T> source) {
    this.source = source;
  }

  @Override
  public T get() {
    T known = value;
    if (known == null) {
      known = source.get();
      value = known;
    }
    return known;
  }
}
