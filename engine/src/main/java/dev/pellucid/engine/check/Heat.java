package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
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
    Setting hottest = null;
    for (Pass pass : recipe.recipe().process().inOrder()) {
      Optional<Setting> setting =
          pass.step().heats() ? pass.setting(Property.TEMPERATURE) : Optional.empty();
      if (setting.isPresent() && end.applyAsDouble(setting.get()) >= from) {
        boolean more =
            hottest == null || end.applyAsDouble(setting.get()) > end.applyAsDouble(hottest);
        hottest = more ? setting.get() : hottest;
      }
    }
    return Optional.ofNullable(hottest);
  }

  /** In °C. */
  static double from(RuleContext recipe) {
    Optional<PracticeBound> bound =
        recipe.tables().practice().bound(Practice.BoundOf.CONDITIONING_TEMPERATURE);
    return bound.isPresent() && bound.get().low() > 0 ? bound.get().low() : USUAL;
  }
}
