package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.text.Span;

/**
 * A step that an ingredient goes through and for which its stability class tells nothing at the
 * temperature, in °C.
 */
public record RetentionGap(String stability, String step, double temperature, Span span) {
  static RetentionGap of(String stability, Pass pass, double temperature) {
    return new RetentionGap(stability, pass.step().word(), temperature, pass.span());
  }
}
