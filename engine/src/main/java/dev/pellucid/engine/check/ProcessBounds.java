package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/**
 * Which bound of practice a setting of a process is held to. Rules that show what follows from a
 * setting ask here whether it is itself outside, for then that is what is wrong, and it is told.
 *
 * @param premix whether it is a premix that is made
 */
record ProcessBounds(Practice practice, Passes passes, boolean premix) {

  static ProcessBounds of(RuleContext recipe) {
    return new ProcessBounds(recipe.tables().practice(), recipe.recipe().process(), false);
  }

  Optional<BoundOf> bound(Step step, Property property) {
    return switch (step) {
      case BLEND ->
          when(
              property == Property.TIME,
              premix ? BoundOf.PREMIX_BLENDING_TIME : BoundOf.BLENDING_TIME);
      case ADD_WATER -> property == Property.ON_MIX ? water() : Optional.empty();
      case CONDITION ->
          property == Property.TIME
              ? Optional.of(BoundOf.CONDITIONING_TIME)
              : when(property == Property.TEMPERATURE, BoundOf.CONDITIONING_TEMPERATURE);
      case PELLET -> when(property == Property.TEMPERATURE, BoundOf.PELLETING_TEMPERATURE);
      case EXTRUDE -> when(property == Property.TEMPERATURE, BoundOf.EXTRUDING_TEMPERATURE);
      case DRY ->
          property == Property.TIME
              ? Optional.of(BoundOf.DRYING_TIME)
              : when(property == Property.TEMPERATURE, BoundOf.DRYING_TEMPERATURE);
      case COOL -> when(property == Property.TEMPERATURE, BoundOf.COOLING_TEMPERATURE);
      case COAT -> when(property == Property.TEMPERATURE, BoundOf.COATING_TEMPERATURE);
      case STORE ->
          property == Property.SHELF_LIFE
              ? Optional.of(premix ? BoundOf.PREMIX_SHELF_LIFE : BoundOf.SHELF_LIFE)
              : when(property == Property.TEMPERATURE, BoundOf.STORAGE_TEMPERATURE);
      case GRIND, ADD_LIQUID, SIEVE, PACK -> Optional.empty();
    };
  }

  /** A press takes little water beside steam, or none. */
  private Optional<BoundOf> water() {
    return passes.has(Step.CONDITION)
        ? when(passes.has(Step.EXTRUDE), BoundOf.WATER_BESIDE_STEAM)
        : Optional.of(BoundOf.WATER_WITHOUT_STEAM);
  }

  private static Optional<BoundOf> when(boolean it, BoundOf which) {
    return it ? Optional.of(which) : Optional.empty();
  }

  /** Whether some setting of this property of a step is outside its bound. */
  boolean isOutside(Step step, Property property) {
    Optional<BoundOf> which = bound(step, property);
    if (which.isEmpty()) {
      return false;
    }
    for (Pass pass : passes.inOrder()) {
      for (Setting setting : pass.settings()) {
        if (pass.step() == step
            && setting.property() == property
            && isOutside(which.get(), setting)) {
          return true;
        }
      }
    }
    return false;
  }

  boolean isOutside(BoundOf which, Setting setting) {
    return isOutside(which, setting.least()) || isOutside(which, setting.most());
  }

  private boolean isOutside(BoundOf which, double figure) {
    Optional<Practice.PracticeBound> bound = practice.bound(which);
    return bound.isPresent()
        && (Closeness.isBelow(figure, bound.get().low())
            || Closeness.isAbove(figure, bound.get().high()));
  }
}
