package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.Met;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.List;

/** A recipe asks to meet a profile that was written for another species. */
final class SpeciesOutsideProfile implements Rule {
  private static final Code CODE = new Code("species-outside-profile");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Met met : recipe.recipe().profiles()) {
      if (!fits(recipe.recipe(), met.profile())) {
        recipe
            .recipe()
            .species()
            .ifPresent(
                species ->
                    met.asked()
                        .ifPresent(span -> out.accept(finding(span, met.profile(), species))));
      }
    }
  }

  /** True where either of the two tells no species. */
  static boolean fits(ResolvedRecipe recipe, Profile profile) {
    if (profile.species().isEmpty() || recipe.species().isEmpty()) {
      return true;
    }
    for (String name : profile.species()) {
      if (recipe.species().get().is(name)) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(Span span, Profile profile, Species species) {
    return Finding.warning(
            CODE,
            span,
            profile.name()
                + " is for "
                + String.join(" and ", profile.species())
                + ", this feed is for "
                + species.name())
        .seeing("profile written", profile.declared())
        .helping(
            "meet a profile for "
                + species.name()
                + ", or add a species line to "
                + profile.name()
                + " if it holds for both")
        .about(new About(profile.name(), About.Side.NONE, List.of()));
  }
}
