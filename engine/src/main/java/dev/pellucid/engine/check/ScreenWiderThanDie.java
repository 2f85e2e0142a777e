package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/** What is ground so coarsely that a grain of it does not go through the die. */
final class ScreenWiderThanDie implements Rule {
  private static final Code CODE = new Code("screen-wider-than-die");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Setting> die = recipe.recipe().process().die();
    if (die.isEmpty() || DieForFish.isOfOtherFish(recipe)) {
      return;
    }
    Optional<PracticeBound> part = recipe.tables().practice().bound(BoundOf.SCREEN_OF_DIE);
    for (Pass pass : recipe.recipe().process().inOrder()) {
      for (Setting setting : pass.settings()) {
        if (pass.step() == Step.GRIND
            && setting.property() == Property.SCREEN
            && blocks(setting, die.get())) {
          out.accept(finding(setting, die.get(), part));
        }
      }
    }
  }

  /** Whether the holes of the screen are wider than those of the die. */
  static boolean blocks(Setting screen, Setting die) {
    return Closeness.isAbove(screen.high(), die.aim());
  }

  private static Finding finding(Setting screen, Setting die, Optional<PracticeBound> part) {
    return Finding.error(
            CODE,
            screen.span(),
            "grind screen is "
                + Figures.plain(screen.high(), Unit.MM)
                + ", the die is "
                + Figures.plain(die.aim(), Unit.MM)
                + ": what goes through the screen blocks the die")
        .seeing("die written", die.span())
        .helping(
            part.isPresent() && part.get().high() < 1
                ? "take a screen of at most "
                    + Figures.plain(die.aim() * part.get().high(), Unit.MM)
                    + ", "
                    + Figures.plain(part.get().high(), Unit.PERCENT)
                    + " of the die"
                : "take a finer screen");
  }
}
