package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A feed without anything of a group that a profile says it must hold. */
final class MustHold implements Rule {
  private static final Code CODE = new Code("must-hold");
  private static final int NAMED = 3;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Set<String> said = new HashSet<>();
    for (ResolvedRecipe.Met met : recipe.recipe().profiles()) {
      for (Word what : met.profile().mustHold()) {
        if (!isIn(recipe.recipe(), what.text()) && said.add(what.text())) {
          out.accept(finding(recipe, met, what));
        }
      }
    }
  }

  private static boolean isIn(ResolvedRecipe recipe, String what) {
    for (Line line : recipe.taken()) {
      if (line.share().isPositive() && brings(line, what)) {
        return true;
      }
    }
    return false;
  }

  private static boolean brings(Line line, String what) {
    if (line.material().isCalled(what)) {
      return true;
    }
    for (Ingredient one : line.material().ingredients()) {
      if (one.name().equals(what) || one.formerly().contains(what) || one.groups().contains(what)) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(RuleContext recipe, ResolvedRecipe.Met met, Word what) {
    Profile profile = met.profile();
    List<String> some = new ArrayList<>();
    for (Ingredient one : recipe.tables().ingredients().values()) {
      if (one.groups().contains(what.text())) {
        some.add(one.name());
      }
    }
    Finding finding =
        Finding.error(
                CODE,
                met.asked().isPresent() ? met.asked().get() : recipe.recipe().declared(),
                recipe.recipe().code()
                    + " holds nothing of "
                    + what
                    + ", and "
                    + profile.name()
                    + " says it must")
            .seeing("asked here", what.span())
            .about(new About(what.text(), About.Side.MIN, List.of()));
    return finding.helping(
        some.isEmpty()
            ? "add " + what + " to the mix"
            : "add one of the group: "
                + String.join(", ", some.subList(0, Math.min(NAMED, some.size()))));
  }
}
