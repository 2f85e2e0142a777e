package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.InDryer;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/**
 * A bed that takes longer for the water of one filling than the recipe says that drying takes: the
 * feed is packed wet, or lies in the heat for longer than its vitamins were reckoned for. On a belt
 * each pellet is dried as long as the belt is slow, whatever the batch. Silent where the figures of
 * the dryer are themselves in doubt.
 */
final class DryerTooSlow implements Rule {
  private static final Code CODE = new Code("dryer-too-slow");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Setting> time = recipe.recipe().process().setting(Step.DRY, Property.TIME);
    Optional<WeighingPlan> plan = recipe.floor().plan();
    if (time.isEmpty() || plan.isEmpty() || plan.get().dryer().isEmpty()) {
      return;
    }
    InDryer dryer = plan.get().dryer().get();
    boolean filled =
        dryer.dryer().way().byKind(trays -> false, bed -> !bed.isDoubted(), belt -> false);
    ProcessBounds bounds = ProcessBounds.of(recipe);
    if (filled
        && Closeness.isAbove(dryer.hoursByWater().orElse(0), time.get().high())
        && !bounds.isOutside(Step.DRY, Property.TIME)
        && !bounds.isOutside(Step.ADD_WATER, Property.ON_MIX)
        && !BatchTakesLong.isSaid(recipe)) {
      out.accept(finding(dryer, time.get(), recipe.recipe().plant().orElseThrow()));
    }
  }

  private static Finding finding(InDryer dryer, Setting time, Plant plant) {
    double perRound = dryer.water() / dryer.rounds();
    return Finding.warning(
            CODE,
            time.span(),
            "the "
                + dryer.dryer().title()
                + " needs "
                + Figures.fixed(dryer.hoursByWater().orElse(0), 1)
                + " h to take "
                + Figures.fixed(perRound, 0)
                + " kg of water off a filling, dry time is "
                + time.written().target().asWritten())
        .seeing("plant written", plant.declared())
        .helping(
            "make a smaller batch, or write a smaller holds for the dryer in plant/"
                + plant.name()
                + ".yaml, so that it is filled with less")
        .helping("or write the time that it takes, and look at the vitamins that heat destroys");
  }
}
