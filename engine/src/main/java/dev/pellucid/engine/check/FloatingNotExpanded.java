package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.syntax.Word;
import java.util.Optional;

/**
 * A feed that is to float and is made in a way that does not expand it: from a pellet press, whose
 * pellets sink, or from an extruder that is too cold for the water to flash off behind the die.
 */
final class FloatingNotExpanded implements Rule {
  private static final Code CODE = new Code("floating-not-expanded");
  private static final String HELP = "write habit sinking, or extrude it ";

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Word> floating = floating(recipe.recipe());
    if (floating.isEmpty()) {
      return;
    }
    Optional<Pass> press = press(recipe.recipe().process());
    if (press.isPresent()) {
      out.accept(
          Finding.error(
                  CODE,
                  floating.get().span(),
                  "this feed is to float, and what a pellet press makes sinks")
              .seeing("pellet written", press.get().span())
              .helping(HELP + "hot instead of pressing it"));
    }
    Optional<Setting> cold = cold(recipe);
    if (cold.isPresent()) {
      PracticeBound bound =
          recipe.tables().practice().bound(BoundOf.EXPANDING_TEMPERATURE).orElseThrow();
      out.accept(
          Finding.warning(
                  CODE,
                  floating.get().span(),
                  "this feed is to float, and it is extruded at "
                      + Figures.plain(cold.get().most(), Unit.CELSIUS)
                      + ", feed expands from "
                      + Figures.plain(bound.low(), Unit.CELSIUS))
              .seeing("temperature written", cold.get().span())
              .noting("the bound is " + bound.source().reliability().inWords())
              .helping(HELP + "hotter"));
    }
  }

  /**
   * The extruder of a floating feed that is too cold, where its temperature is not told as wrong.
   */
  static Optional<Setting> cold(RuleContext recipe) {
    Passes passes = recipe.recipe().process();
    Optional<PracticeBound> bound = recipe.tables().practice().bound(BoundOf.EXPANDING_TEMPERATURE);
    Optional<Setting> hot = passes.setting(Step.EXTRUDE, Property.TEMPERATURE);
    return bound.isPresent()
            && hot.isPresent()
            && floating(recipe.recipe()).isPresent()
            && Closeness.isBelow(hot.get().most(), bound.get().low())
            && !ProcessBounds.of(recipe).isOutside(Step.EXTRUDE, Property.TEMPERATURE)
        ? hot
        : Optional.empty();
  }

  private static Optional<Word> floating(ResolvedRecipe recipe) {
    Optional<Word> habit = recipe.habit();
    return habit.isPresent() && habit.get().text().equals("floating") ? habit : Optional.empty();
  }

  /** The press, where nothing is extruded. */
  private static Optional<Pass> press(Passes passes) {
    return passes.has(Step.EXTRUDE) ? Optional.empty() : passes.first(Step.PELLET);
  }
}
