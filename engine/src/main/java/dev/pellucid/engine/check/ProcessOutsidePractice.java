package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/** A setting of the process, as it is written, outside what the trade does. */
final class ProcessOutsidePractice implements Rule {
  private static final Code CODE = new Code("process-outside-practice");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    OutsidePractice practice = new OutsidePractice(CODE, recipe.tables().practice(), out);
    Passes passes = recipe.recipe().process();
    boolean steamed = passes.has(Step.CONDITION);
    Optional<Obstacle> obstacle = recipe.balances().obstacle();
    boolean cold = obstacle.isPresent() && obstacle.get().isCold();
    for (Pass pass : passes.inOrder()) {
      boolean said = cold && pass.step() == Step.CONDITION;
      for (Setting setting : said ? List.<Setting>of() : pass.settings()) {
        Optional<BoundOf> which = which(pass, setting, steamed);
        if (which.isPresent()) {
          hold(practice, which.get(), pass, setting);
        }
      }
    }
    screen(practice, passes);
  }

  private static Optional<BoundOf> which(Pass pass, Setting setting, boolean steamed) {
    Property property = setting.property();
    return switch (pass.step()) {
      case CONDITION -> when(property == Property.TEMPERATURE, BoundOf.CONDITIONING_TEMPERATURE);
      case BLEND -> when(property == Property.TIME, BoundOf.BLENDING_TIME);
      case ADD_WATER -> when(property == Property.ON_MIX && !steamed, BoundOf.WATER_WITHOUT_STEAM);
      case DRY ->
          property == Property.TIME
              ? Optional.of(BoundOf.DRYING_TIME)
              : when(property == Property.TEMPERATURE, BoundOf.DRYING_TEMPERATURE);
      case STORE -> when(property == Property.SHELF_LIFE, BoundOf.SHELF_LIFE);
      case GRIND, ADD_LIQUID, PELLET, EXTRUDE, COOL, COAT, SIEVE, PACK -> Optional.empty();
    };
  }

  private static Optional<BoundOf> when(boolean it, BoundOf which) {
    return it ? Optional.of(which) : Optional.empty();
  }

  private static void hold(OutsidePractice practice, BoundOf which, Pass pass, Setting setting) {
    Unit unit = which.unit();
    if (practice.isOutside(which, setting.least()) || practice.isOutside(which, setting.most())) {
      practice.hold(
          which,
          setting.span(),
          pass.step().word() + " " + setting.property().word() + " is",
          setting.least(),
          setting.most(),
          base -> Figures.plain(base, unit));
    }
  }

  /** Every grinding by itself: one coarse ingredient is enough to block a die. */
  private static void screen(OutsidePractice practice, Passes passes) {
    Optional<Setting> die = passes.die();
    if (die.isEmpty()) {
      return;
    }
    for (Pass pass : passes.inOrder()) {
      for (Setting setting : pass.settings()) {
        if (pass.step() == Step.GRIND && setting.property() == Property.SCREEN) {
          practice.hold(
              BoundOf.SCREEN_OF_DIE,
              setting.span(),
              "the screen as a part of the die of "
                  + Figures.plain(die.get().aim(), Unit.MM)
                  + " is",
              setting.low() / die.get().aim(),
              setting.high() / die.get().aim(),
              base -> Figures.plain(base, Unit.PERCENT));
        }
      }
    }
  }
}
