package dev.pellucid.engine.records;

import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/** The way from a recipe to the same recipe with other shares, as if they stood in its text. */
@FunctionalInterface
public interface Reshared {
  /**
   * Its lines stay where they stand, and the rest and all overage follow by the rules of recipes.
   *
   * @param edits of shares alone
   * @return empty where the lines then make no recipe, as where they are not 100 % in all
   */
  Optional<ResolvedRecipe> with(ResolvedRecipe recipe, List<TextEdit> edits);
}
