package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An ingredient that is by its traits an additive and whose file does not say so: a label with
 * additives apart would list it among the feed materials and leave out the added amount. An
 * antioxidant is none by that trait alone, for an oil may carry one.
 */
final class AdditiveNotTold implements Rule {
  private static final Code CODE = new Code("additive-not-told");
  private static final Set<Trait> ADDED = Set.of(Trait.VITAMIN, Trait.CHOLINE, Trait.TRACE_SALT);

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
    Optional<LabelRules> rules = recipe.tables().label();
    if (rules.isEmpty()
        || !rules.get().additivesApart()
        || recipe.recipe().label().isEmpty()
        || recipe.feed().isEmpty()) {
      return;
    }
    Set<Ingredient> seen = new HashSet<>();
    for (Row row : recipe.feed().get().rows()) {
      if (isSilent(row.ingredient()) && seen.add(row.ingredient())) {
        out.accept(finding(row.ingredient(), row.line()));
      }
    }
  }

  private static boolean isSilent(Ingredient one) {
    return one.additive().isEmpty() && !Collections.disjoint(one.traits(), ADDED);
  }

  private static Finding finding(Ingredient one, Line line) {
    return Finding.warning(
            CODE, line.name(), one.name() + " looks like an additive and does not say so")
        .seeing("ingredient written", one.declared())
        .noting("the label lists it among the ingredients, without the added amount")
        .helping("add to its file: additive: with functional-group, nutrient and source")
        .about(new About(one.name(), About.Side.NONE, List.of(line.material().name())));
  }
}
