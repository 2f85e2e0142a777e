package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/** The passes of a recipe in their order. */
public record Passes(List<Pass> inOrder) {
  public Passes {
    inOrder = List.copyOf(inOrder);
  }

  /** Whether the feed is extruded, else pelleted, else a mash. */
  public ProcessKind kind() {
    return has(Step.EXTRUDE)
        ? ProcessKind.EXTRUDED
        : has(Step.PELLET) ? ProcessKind.PELLETED : ProcessKind.MASH;
  }

  /** Whether any line tells how the feed is made; the coat alone goes on without one. */
  public boolean isTold() {
    for (Pass pass : inOrder) {
      if (!pass.settings().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  public boolean has(Step step) {
    return first(step).isPresent();
  }

  /** The first pass through a step. */
  public Optional<Pass> first(Step step) {
    for (Pass pass : inOrder) {
      if (pass.step() == step) {
        return Optional.of(pass);
      }
    }
    return Optional.empty();
  }

  /** The first setting of a property of a step, for all that is in the machine. */
  public Optional<Setting> setting(Step step, Property property) {
    for (Pass pass : inOrder) {
      if (pass.step() == step && pass.setting(property).isPresent()) {
        return pass.setting(property);
      }
    }
    return Optional.empty();
  }

  /** The holes that the pellets come out of: those of the last pass through a die. */
  public Optional<Setting> die() {
    for (int i = inOrder.size() - 1; i >= 0; i--) {
      Pass pass = inOrder.get(i);
      if (pass.step().shapes() && pass.setting(Property.DIE).isPresent()) {
        return pass.setting(Property.DIE);
      }
    }
    return Optional.empty();
  }
}
