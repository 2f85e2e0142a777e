package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Asked;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

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

  /** What a feed holds, row by row. */
  static List<Row> rows(RuleContext recipe) {
    return recipe.feed().orElseThrow().rows();
  }

  /**
   * Whether a row shows its ingredient for the first time; of one whose file could not be read
   * nothing is asked.
   *
   * @param seen names of those before, to which this one is added
   */
  static boolean isFirst(Row row, List<String> seen) {
    Ingredient one = row.ingredient();
    if (!one.whole() || row.kg() <= 0 || seen.contains(one.name())) {
      return false;
    }
    seen.add(one.name());
    return true;
  }

  /** A finding with the place and the article of what asks. */
  static Finding asking(Finding finding, Asked asked) {
    return finding.seeing("asked for by " + asked.article() + ", written", asked.place());
  }
}
