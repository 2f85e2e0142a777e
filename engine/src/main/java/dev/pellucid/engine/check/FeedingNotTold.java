package dev.pellucid.engine.check;

import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Asked;
import dev.pellucid.engine.data.LabelRules.Must;
import dev.pellucid.engine.data.Species;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/** A species that does not say how its feed is used, which the bag must tell. */
final class FeedingNotTold implements Rule {
  private static final Code CODE = new Code("feeding-not-told");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<LabelRules> rules = OnBags.rules(recipe);
    Optional<Species> species = recipe.recipe().species();
    if (rules.isPresent()
        && rules.get().mustTell().containsKey(Must.FEEDING)
        && species.isPresent()
        && species.get().feeding().isEmpty()) {
      out.accept(finding(species.get(), rules.get().mustTell().get(Must.FEEDING)));
    }
  }

  private static Finding finding(Species species, Asked asked) {
    Finding finding =
        Finding.warning(
            CODE,
            species.declared(),
            species.name() + " does not say how its feed is used, and the bag must tell it");
    return OnBags.asking(finding, asked)
        .helping("add to its file: feeding: and a list of sentences for the bag")
        .about(new About(species.name(), About.Side.NONE, List.of("feeding")));
  }
}
