package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.OwnSpecies;
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
    for (Line line : recipe.recipe().taken()) {
      for (Ingredient one : line.material().ingredients()) {
        if (OwnSpecies.is(one, species.get())) {
          Finding finding = finding(line, one, species.get());
          Optional<LimitStatus> law = law(recipe);
          if (law.isPresent()) {
            out.accept(forbidden(finding, law.get().limit()), law.get());
          } else {
            out.accept(finding);
          }
        }
      }
    }
  }

  /** Where the folder has a line of law that forbids it. */
  private static Optional<LimitStatus> law(RuleContext recipe) {
    for (LimitStatus status : recipe.limits()) {
      if (OwnSpecies.isSubject(status.limit()) && status.state().isBroken()) {
        return Optional.of(status);
      }
    }
    return Optional.empty();
  }

  private static Finding forbidden(Finding finding, Limit law) {
    Finding seen = finding.seeing("limit written", law.origin().span());
    return law.origin().source().isPresent()
        ? seen.noting(law.origin().source().get().cite())
        : seen;
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
