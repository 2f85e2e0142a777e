package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A setting of the process, as it is written, outside what the trade does. Where a rule speaks of
 * the setting that knows more than practice, this one is silent: of the time of a mixer that tells
 * its own, and of what is cut, ground and sieved for a die that is not the one of these fish.
 */
final class ProcessOutsidePractice implements Rule {
  private static final Code CODE = new Code("process-outside-practice");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isCause() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Obstacle> obstacle = recipe.balances().obstacle();
    boolean cold = obstacle.isPresent() && obstacle.get().isCold();
    ProcessBounds bounds = ProcessBounds.of(recipe);
    boolean mixed = bounds.passes().has(Step.BLEND) && BlendTime.mixer(recipe).isPresent();
    for (Pass pass : bounds.passes().inOrder()) {
      Step step = pass.step();
      boolean said = (cold && step == Step.CONDITION) || (mixed && step == Step.BLEND);
      if (!said) {
        hold(bounds, pass, out);
      }
    }
    Optional<Setting> die = bounds.passes().die();
    if (die.isPresent() && !DieForFish.isOfOtherFish(recipe)) {
      beside(die.get(), bounds, out);
    }
  }

  /** The same of how a premix is made. */
  static void look(ProcessBounds bounds, Consumer<Finding> out) {
    for (Pass pass : bounds.passes().inOrder()) {
      hold(bounds, pass, out);
    }
  }

  private static void hold(ProcessBounds bounds, Pass pass, Consumer<Finding> out) {
    for (Setting setting : pass.settings()) {
      Optional<BoundOf> which = bounds.bound(pass.step(), setting.property());
      if (which.isPresent() && bounds.isOutside(which.get(), setting)) {
        Unit unit = which.get().unit();
        boolean one = setting.least() == setting.most();
        String asWritten = setting.written().target().asWritten();
        new OutsidePractice(CODE, bounds.practice(), out)
            .hold(
                which.get(),
                setting.span(),
                pass.step().word() + " " + setting.property().word() + " is",
                setting.least(),
                setting.most(),
                base -> one ? asWritten : Figures.plain(base, unit));
      }
    }
  }

  /**
   * What is measured against the die. Every grinding by itself: one coarse ingredient is enough to
   * block a die.
   */
  private static void beside(Setting die, ProcessBounds bounds, Consumer<Finding> out) {
    for (Pass pass : bounds.passes().inOrder()) {
      for (Setting setting : pass.settings()) {
        Optional<BoundOf> which = besideDie(pass.step(), setting.property());
        boolean blocks = pass.step() == Step.GRIND && ScreenWiderThanDie.blocks(setting, die);
        if (which.isPresent() && !blocks) {
          new OutsidePractice(CODE, bounds.practice(), out)
              .hold(
                  which.get(),
                  setting.span(),
                  what(pass.step())
                      + setting.written().target().asWritten()
                      + " as a part of the die of "
                      + Figures.plain(die.aim(), Unit.MM)
                      + " is",
                  setting.low() / die.aim(),
                  setting.high() / die.aim(),
                  base -> Figures.plain(base, Unit.PERCENT));
        }
      }
    }
  }

  private static Optional<BoundOf> besideDie(Step step, Property property) {
    return switch (property) {
      case SCREEN -> Optional.of(step == Step.SIEVE ? BoundOf.SIEVE_OF_DIE : BoundOf.SCREEN_OF_DIE);
      case LENGTH -> Optional.of(BoundOf.LENGTH_OF_DIE);
      case TIME, TEMPERATURE, START, ON_MIX, TO_MOISTURE, MOISTURE, DIE, METHOD, BAG, SHELF_LIFE ->
          Optional.empty();
    };
  }

  private static String what(Step step) {
    return switch (step) {
      case GRIND -> "the screen of ";
      case SIEVE -> "the sieve of ";
      default -> "the length of ";
    };
  }
}
