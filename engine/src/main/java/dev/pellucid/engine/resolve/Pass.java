package dev.pellucid.engine.resolve;

import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/** One pass through a step: neighbouring lines with one step word. */
public record Pass(Step step, List<Setting> settings, Span span) {
  public Pass {
    settings = List.copyOf(settings);
  }

  /** The word of the step as it is written in a recipe. */
  public String word() {
    return step.word();
  }

  /** Whether this is where the coat goes on. */
  public boolean coats() {
    return step == Step.COAT;
  }

  /** The setting for all that is in the machine. */
  public Optional<Setting> setting(Property property) {
    for (Setting setting : settings) {
      if (setting.property() == property && setting.ingredient().isEmpty()) {
        return Optional.of(setting);
      }
    }
    return Optional.empty();
  }
}
