package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * A line at zero that says nothing of how far it may move, so that nobody can tell whether it was
 * left out for now or for good. A premix at zero is off its dose, and a {@code rest} is at zero
 * where the others take all.
 */
final class LineAtZero implements Rule {
  private static final Code CODE = new Code("line-at-zero");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().lines()) {
      if (!line.isTaken()
          && !line.rest()
          && line.within().isEmpty()
          && line.material().premixed().isEmpty()) {
        out.accept(finding(line));
      }
    }
  }

  private static Finding finding(Line line) {
    String name = line.material().name();
    return Finding.note(CODE, line.figure(), name + " is at 0 %, so it brings nothing to the feed")
        .helping("take the line out, or put # before it")
        .helping(
            "to keep it for later, say how much it would be: within 2 to 10 % or none, with your"
                + " figures")
        .about(new About(name, About.Side.NONE, List.of()));
  }
}
