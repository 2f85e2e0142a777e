package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Whether a mix is heated on its way through the die. Heat begins where practice says that
 * conditioning does; where the folder tells no such bound, at 70 °C (common practice, no source).
 */
final class Heat {
  private static final double USUAL = 70;

  private Heat() {}

  /** The hottest of the settings that may heat the mix, at the hot end of what is taken. */
  static Optional<Setting> possible(RuleContext recipe) {
    return hottest(recipe, Setting::most);
  }

  /** Whether the mix is heated even at the cool end of what is taken. */
  static boolean isCertain(RuleContext recipe) {
    return hottest(recipe, Setting::least).isPresent();
  }

  private static Optional<Setting> hottest(RuleContext recipe, ToDoubleFunction<Setting> end) {
    double from = from(recipe);
    return recipe.recipe().process().inOrder().stream()
        .filter(pass -> pass.step().heats())
        .flatMap(pass -> pass.setting(Property.TEMPERATURE).stream())
        .filter(setting -> end.applyAsDouble(setting) >= from)
        .max(Comparator.comparingDouble(end));
  }

  /** In °C. */
  static double from(RuleContext recipe) {
    return recipe
        .tables()
        .practice()
        .bound(Practice.BoundOf.CONDITIONING_TEMPERATURE)
        .map(bound -> bound.low())
        .filter(low -> low > 0)
        .orElse(USUAL);
  }
}
