package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Species;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words for an approved recipe of which nobody asks what somebody must. */
final class LostDemands {
  private LostDemands() {}

  /** No law of the jurisdiction binds a species that approved feeds are made for. */
  static Finding law(Lookup lookup, Species fed) {
    String jurisdiction = lookup.frame().settings().jurisdiction().orElse("");
    return Finding.error(
            RecipeResolver.NO_LAW_FOR_SPECIES,
            fed.declared(),
            "no law of " + jurisdiction + " in this folder holds for " + fed.name())
        .seeing("jurisdiction written", lookup.frame().settings().place())
        .noting("approved feeds of this species are held to no law")
        .helping("give it the group that the law names, such as groups: [salmonids]")
        .helping("or add the law that holds for it, as a .limits file with kind law");
  }

  /** An approved recipe meets nothing that says what its fish need. */
  static Finding need(Lookup lookup, String code, Optional<Species> species, Span declared) {
    List<String> fit = new ArrayList<>();
    for (String name : lookup.profiles()) {
      Optional<Profile> profile = lookup.profile(name);
      if (profile.isPresent()
          && profile.get().kind() == Limit.Kind.NEED
          && (species.isEmpty() || profile.get().isFor(species.get()))) {
        fit.add(name);
      }
    }
    return Finding.error(
            RecipeResolver.NO_NEED,
            declared,
            code + " is approved and meets no profile of what its fish need")
        .noting("nothing holds it to protein, amino acids, minerals or vitamins")
        .helping(
            fit.isEmpty()
                ? "write what they need as a .limits file with kind need, and name it with meets"
                : "add a line to the head: meets, and the one for its fish, "
                    + String.join(", ", fit));
  }
}
