package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.function.Consumer;

/**
 * A premix that is wetted, heated or shaped: it lies for months before it is used, its vitamins do
 * not outlive that, and no mixer spreads pellets. Said once of a premix.
 */
final class PremixNotDry {
  static final Code CODE = new Code("premix-not-dry");

  private PremixNotDry() {}

  static void look(ResolvedPremix premix, Consumer<Finding> out) {
    for (Pass pass : premix.process().inOrder()) {
      if (pass.step() == Step.ADD_WATER || pass.step().heats() || pass.step().shapes()) {
        Span place =
            pass.settings().isEmpty()
                ? pass.span()
                : pass.settings().get(0).written().stepAsWritten().span();
        out.accept(
            Finding.error(CODE, place, "a premix is blended dry, and " + what(pass.step()))
                .helping("take the lines of " + pass.word() + " out of " + premix.code()));
        return;
      }
    }
  }

  private static String what(Step step) {
    return switch (step) {
      case ADD_WATER -> "this one gets water";
      case CONDITION -> "this one is steamed";
      case PELLET -> "this one is pelleted";
      case EXTRUDE -> "this one is extruded";
      case GRIND, BLEND, ADD_LIQUID, DRY, COOL, COAT, SIEVE, PACK, STORE ->
          "this one goes through " + step.word();
    };
  }
}
