package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.text.Span;
import java.util.Optional;

/**
 * A step that an ingredient goes through and for which its stability class tells nothing at the
 * temperature, in °C; empty where the step does not say how hot it is.
 */
public record RetentionGap(String stability, String step, Optional<Double> temperature, Span span) {
  /** Whether the recipe lacks the whole step, or the time of its store. */
  public boolean isOfWayUntold() {
    return temperature.isEmpty() && (step.equals("process") || step.equals("store"));
  }

  /** Of a recipe that does not tell how it is made. */
  static RetentionGap ofProcess(String stability, Span recipe) {
    return new RetentionGap(stability, "process", Optional.empty(), recipe);
  }

  static RetentionGap of(String stability, Pass pass, Optional<Double> temperature) {
    Optional<Setting> told = pass.setting(Property.TEMPERATURE);
    Span span = told.isPresent() ? told.get().span() : pass.span();
    return new RetentionGap(stability, pass.step().word(), temperature, span);
  }
}
