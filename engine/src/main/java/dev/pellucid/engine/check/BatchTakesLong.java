package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.InDryer;
import dev.pellucid.engine.weighing.InDryer.Hours;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Plural;
import java.util.Optional;

/**
 * A batch that the plant needs days for: its dryer is filled so often, or runs so long, that the
 * last wet pellets wait longer than practice lets them, or its mixer or coater more than a hundred
 * times. Silent where the time of drying or the water of the mix cannot be meant.
 */
final class BatchTakesLong implements Rule {
  private static final Code CODE = new Code("batch-takes-long");
  private static final int MOST_LOADS = 100;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<BatchSize> batch = recipe.recipe().batch();
    Optional<WeighingPlan> plan = recipe.floor().plan();
    if (batch.isEmpty() || plan.isEmpty()) {
      return;
    }
    Optional<String> takes = drying(recipe, plan.get());
    if (takes.isEmpty()) {
      takes = mixing(plan.get());
    }
    if (takes.isPresent()) {
      out.accept(
          Finding.warning(
                  CODE,
                  batch.get().written().span(),
                  batch.get().written().asWritten() + " takes " + takes.get())
              .helping(
                  "make less at once, and plan several batches; look for a wrong unit of batch"));
    }
  }

  /** Whether it is said, so that what follows from it needs no words. */
  static boolean isSaid(RuleContext recipe) {
    Optional<WeighingPlan> plan = recipe.floor().plan();
    return plan.isPresent()
        && (drying(recipe, plan.get()).isPresent() || mixing(plan.get()).isPresent());
  }

  private static Optional<String> drying(RuleContext recipe, WeighingPlan plan) {
    Optional<InDryer> dryer = plan.dryer();
    Optional<PracticeBound> most = recipe.tables().practice().bound(BoundOf.DRYING_OF_BATCH);
    if (dryer.isEmpty() || dryer.get().all().isEmpty() || most.isEmpty()) {
      return Optional.empty();
    }
    ProcessBounds bounds = ProcessBounds.of(recipe);
    return Closeness.isAbove(dryer.get().all().get().low(), most.get().high())
            && !bounds.isOutside(Step.DRY, Property.TIME)
            && !bounds.isOutside(Step.ADD_WATER, Property.ON_MIX)
        ? Optional.of(
            rounds(
                dryer.get(),
                recipe.recipe().process().setting(Step.DRY, Property.TIME),
                most.get()))
        : Optional.empty();
  }

  private static String rounds(InDryer dryer, Optional<Setting> time, PracticeBound most) {
    Hours all = dryer.all().orElseThrow();
    String shortest = days(all.low());
    String longest = days(all.high());
    return filled(dryer, time)
        + ": "
        + (shortest.equals(longest) ? "" : shortest + " to ")
        + longest
        + " days, practice is "
        + most.asWritten();
  }

  private static String filled(InDryer dryer, Optional<Setting> time) {
    if (dryer.trays().isPresent()) {
      String each = time.isPresent() ? " of " + time.get().written().target().asWritten() : "";
      return dryer.trays().get().count() + " trays in " + Plural.of(dryer.rounds(), "round") + each;
    }
    return dryer.rounds() == 1
        ? Figures.fixed(dryer.water(), 0) + " kg of water off in the " + dryer.dryer().title()
        : dryer.rounds() + " fillings of the " + dryer.dryer().title();
  }

  private static String days(double hours) {
    return Figures.fixed(Unit.DAY.fromBase(hours), 0);
  }

  private static Optional<String> mixing(WeighingPlan plan) {
    Optional<Loads> loads = plan.loads();
    if (loads.isPresent() && loads.get().count() > MOST_LOADS) {
      return Optional.of(loads.get().count() + " loads of the " + loads.get().mixer().title());
    }
    return plan.coatRounds() > MOST_LOADS
        ? Optional.of(plan.coatRounds() + " rounds of the coater")
        : Optional.empty();
  }
}
