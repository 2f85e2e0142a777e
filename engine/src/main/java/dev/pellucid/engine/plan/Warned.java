package dev.pellucid.engine.plan;

import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/**
 * What to beware of at one place of the work.
 *
 * @param first cautions that stand here for the first time
 * @param again where those that hold here too already stand; empty for the weighing of the mix
 */
public record Warned(List<Caution> first, List<Optional<Step>> again) {
  public Warned {
    first = List.copyOf(first);
    again = List.copyOf(again);
  }
}
