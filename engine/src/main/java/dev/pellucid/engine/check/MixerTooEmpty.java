package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;

/**
 * A batch that fills no mixer of the plant enough to be mixed evenly. Silent where the water of the
 * mix cannot be meant, which takes its room in the mixer.
 */
final class MixerTooEmpty implements Rule {
  static final Code CODE = new Code("mixer-too-empty");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.floor().batch().isPresent()
        && recipe.recipe().batch().isPresent()
        && !ProcessBounds.of(recipe).isOutside(Step.ADD_WATER, Property.ON_MIX)) {
      BatchSize batch = recipe.recipe().batch().get();
      recipe
          .floor()
          .batch()
          .get()
          .plan()
          .loads()
          .filter(loads -> !loads.fills())
          .ifPresent(loads -> out.accept(finding(batch, loads)));
    }
  }

  private static Finding finding(BatchSize batch, Loads loads) {
    Figures.Pair fill = Figures.apart(loads.dryFill() * 100, loads.mixer().fillLow() * 100, 0);
    double enough = batch.kg() * loads.mixer().fillLow() / loads.dryFill();
    return Finding.warning(
            CODE,
            batch.written().span(),
            (loads.count() == 1 ? "the batch fills the " : "each load fills the ")
                + loads.mixer().title()
                + " to "
                + fill.value()
                + " %, it mixes evenly from "
                + fill.other()
                + " %")
        .helping("make at least " + Figures.plain(enough) + " kg at once, or use a smaller mixer");
  }
}
