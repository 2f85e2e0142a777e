package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Asked;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What rules of the bag share: they look at approved recipes with a label, in a folder that names
 * label rules. What they find stands in the file of an ingredient or species, in the same words
 * whatever recipe shows it, so that a folder says it once.
 */
final class OnBags {
  private OnBags() {}

  /** The label rules, where a bag is to be printed of a recipe. */
  static Optional<LabelRules> rules(RuleContext recipe) {
    boolean printed =
        recipe.feed().isPresent()
            && recipe.recipe().isApproved()
            && recipe.recipe().label().isPresent();
    return printed ? recipe.tables().label() : Optional.empty();
  }

  /** What a feed holds, each ingredient once; one whose file could not be read is left out. */
  static List<Ingredient> held(RuleContext recipe) {
    Set<String> seen = new HashSet<>();
    List<Ingredient> held = new ArrayList<>();
    for (Row row : recipe.feed().orElseThrow().rows()) {
      Ingredient one = row.ingredient();
      if (one.whole() && row.kg() > 0 && seen.add(one.name())) {
        held.add(one);
      }
    }
    return held;
  }

  /** A finding with the place and the article of what asks. */
  static Finding asking(Finding finding, Asked asked) {
    return finding.seeing("asked for by " + asked.article() + ", written", asked.place());
  }
}
