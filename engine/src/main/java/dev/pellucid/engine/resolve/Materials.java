package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.List;
import java.util.Optional;

/** The subject of a line to the material it names. */
final class Materials {
  static final Code UNKNOWN = new Code("unknown-ingredient");
  static final Code NOT_AN_INGREDIENT = new Code("not-an-ingredient");
  static final Code NO_SUCH_FEED = new Code("rework-of-no-recipe");
  static final Code RENAMED = new Code("renamed");

  private final Lookup lookup;
  private final List<Finding> findings;

  Materials(Lookup lookup, List<Finding> findings) {
    this.lookup = lookup;
    this.findings = findings;
  }

  /** The material; empty after a finding, or where a finding elsewhere has said why. */
  Optional<Material> named(Word name) {
    Optional<Material> stocked = lookup.stocked(name.text());
    return stocked.isPresent() ? stocked : notStocked(name);
  }

  /** What is no ingredient, or one that could not be read whole: its own file says why. */
  private Optional<Material> notStocked(Word name) {
    if (lookup.ingredient(name.text()).isPresent()) {
      return Optional.empty();
    }
    Optional<ResolvedPremix> premix = lookup.premix(name.text());
    if (premix.isPresent()) {
      return Optional.of(new Material.Premixed(premix.get()));
    }
    Optional<Ingredient> renamed = lookup.formerly(name.text()).flatMap(lookup::ingredient);
    if (renamed.isPresent()) {
      findings.add(renamed(name, renamed.get().name()));
      return lookup.stocked(renamed.get().name());
    }
    if (!lookup.isBrokenPremix(name.text())) {
      findings.add(missing(name));
    }
    return Optional.empty();
  }

  /** Finished feed; empty after a finding, or where the recipe itself says why. */
  Optional<Material> reworked(Word recipe) {
    if (!lookup.recipes().containsKey(recipe.text())) {
      List<String> near = NearNames.of(recipe.text(), lookup.recipes().keySet());
      findings.add(
          Finding.error(
                  NO_SUCH_FEED,
                  recipe.span(),
                  recipe + " is not the code of a recipe of this folder")
              .helping(
                  Meant.question(near)
                      .orElse(
                          "name the recipe of the feed that is worked in again: rework CG-36")));
      return Optional.empty();
    }
    return lookup.reworked(recipe.text()).map(Material.class::cast);
  }

  static Finding renamed(Word name, String now) {
    return Finding.note(RENAMED, name.span(), name + " is now called " + now)
        .helping("write " + now)
        .fixing(name.span(), now);
  }

  private Finding missing(Word name) {
    if (lookup.frame().nutrients().named(name.text()).isPresent()) {
      return Finding.error(
              NOT_AN_INGREDIENT, name.span(), name + " is a nutrient, not an ingredient")
          .helping("name an ingredient here; what a nutrient must reach stands under limits");
    }
    if (lookup.recipes().containsKey(name.text())) {
      return Finding.error(NOT_AN_INGREDIENT, name.span(), name + " is a recipe, not an ingredient")
          .helping("feed that is worked in again is written: rework " + name)
          .helping("a blend that goes into feeds is a premix: move it to " + name + ".premix");
    }
    if (lookup.frame().groups().containsKey(name.text())) {
      return Finding.error(NOT_AN_INGREDIENT, name.span(), name + " is a group of ingredients")
          .helping("name one ingredient of the group");
    }
    List<String> near = NearNames.of(name.text(), lookup.materials());
    Finding finding =
        Finding.error(UNKNOWN, name.span(), name + " is not known in this folder")
            .helping(
                Meant.question(near).orElse("add ingredients/" + name + ".yaml, or fix the name"));
    return near.size() == 1 ? finding.fixing(name.span(), near.get(0)) : finding;
  }
}
