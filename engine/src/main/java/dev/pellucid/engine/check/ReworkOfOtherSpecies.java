package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material.Reworked;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/**
 * Feed for one species worked into feed for another. What it holds is counted in every limit; what
 * was added to it for the other species and is not told here, nobody sees.
 */
final class ReworkOfOtherSpecies implements Rule {
  private static final Code CODE = new Code("rework-of-other-species");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Species> here = recipe.recipe().species();
    if (here.isEmpty()) {
      return;
    }
    for (Line line : recipe.recipe().taken()) {
      Optional<Reworked> rework = line.material().reworked();
      if (rework.isPresent() && rework.get().species().isPresent()) {
        Species there = rework.get().species().get();
        if (!there.equals(here.get())) {
          out.accept(finding(line, rework.get(), there, here.get()));
        }
      }
    }
  }

  private static Finding finding(Line line, Reworked rework, Species there, Species here) {
    String code = rework.premix().code();
    return Finding.warning(
            CODE,
            line.name(),
            code + " is feed for " + there.name() + ", worked into feed for " + here.name())
        .seeing("recipe written", rework.premix().declared())
        .helping("work it into feed for " + there.name())
        .helping(
            "or see that nothing in it harms "
                + here.name()
                + ": the limits here count what it holds, as far as that is given");
  }
}
