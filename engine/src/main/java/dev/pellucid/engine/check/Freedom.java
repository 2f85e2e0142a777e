package dev.pellucid.engine.check;

import java.util.OptionalInt;
import java.util.Set;

/**
 * What a change of shares must heed beside the bounds of the lines. Lines are named by their index.
 *
 * @param held lines that may not rise
 * @param fixed lines that stay as they are
 * @param decimals of the shares, in percent; empty: as many as the change needs
 */
public record Freedom(Set<Integer> held, Set<Integer> fixed, OptionalInt decimals) {
  /** Nothing beside. */
  static final Freedom ANY = new Freedom(Set.of(), Set.of(), OptionalInt.empty());

  public Freedom {
    held = Set.copyOf(held);
    fixed = Set.copyOf(fixed);
  }

  /** With one decimal more. */
  Freedom finer() {
    return new Freedom(held, fixed, OptionalInt.of(decimals.orElse(0) + 1));
  }
}
