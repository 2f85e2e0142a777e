package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/** Protein of the species that is fed: it carries the diseases of that species. */
final class OwnSpeciesProtein implements Rule {
  private static final Code CODE = new Code("own-species-protein");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Species> species = recipe.recipe().species();
    if (species.isEmpty()) {
      return;
    }
    for (Line line : recipe.recipe().lines()) {
      for (Ingredient one : line.material().ingredients()) {
        if (one.protein().contains(species.get().name())) {
          out.accept(finding(line, one, species.get()));
        }
      }
    }
  }

  private static Finding finding(Line line, Ingredient one, Species species) {
    return Finding.error(
            CODE,
            line.name(),
            one.name() + " is protein of " + species.name() + ", which this feed is for")
        .seeing("ingredient written", one.declared())
        .helping("take a protein of another species")
        .about(new About(one.name(), About.Side.NONE, List.of(line.material().name())));
  }
}
