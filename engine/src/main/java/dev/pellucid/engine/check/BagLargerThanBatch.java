package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/**
 * A batch of which not one bag is filled. Silent where the bag is not one of the plant, and where
 * the batch does not even fill a mixer: then these are told.
 */
final class BagLargerThanBatch implements Rule {
  private static final Code CODE = new Code("bag-larger-than-batch");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Setting> bag = recipe.recipe().process().setting(Step.PACK, Property.BAG);
    Optional<BatchSize> batch = recipe.recipe().batch();
    if (bag.isEmpty() || batch.isEmpty() || recipe.feed().isEmpty()) {
      return;
    }
    double kg = finished(recipe.feed().get(), batch.get());
    if (Closeness.isAbove(bag.get().aim(), kg) && !isSaid(recipe, bag.get())) {
      out.accept(
          Finding.error(
                  CODE,
                  bag.get().span(),
                  "a bag takes "
                      + bag.get().written().target().asWritten()
                      + ", the batch makes "
                      + Figures.plain(kg, Unit.KG))
              .seeing("batch written", batch.get().written().span())
              .helping("fill smaller bags, or make a larger batch"));
    }
  }

  private static double finished(ComputedFeed feed, BatchSize batch) {
    return feed.weighed(batch) / 100 * feed.balances().expected().finished();
  }

  private static boolean isSaid(RuleContext recipe, Setting bag) {
    Optional<Plant> plant = recipe.recipe().plant();
    Optional<WeighingPlan> plan = recipe.floor().plan();
    Optional<Loads> loads = plan.isPresent() ? plan.get().loads() : Optional.empty();
    return (plant.isPresent() && BagNotAtPlant.isAbsent(bag, plant.get()))
        || (loads.isPresent() && !loads.get().fills());
  }
}
