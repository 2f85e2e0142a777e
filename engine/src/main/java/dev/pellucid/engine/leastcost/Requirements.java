package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.Required;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.optimise.Requirement;
import java.util.ArrayList;
import java.util.List;

/** All that a recipe must keep and that hangs on its shares, and what is wished beside. */
final class Requirements {
  private Requirements() {}

  /**
   * @param offered ingredients that may come in
   */
  static List<Requirement> of(RuleContext recipe, Wishes wishes, List<Ingredient> offered) {
    return new ArrayList<>(Required.of(recipe, wishes.margin(), offered));
  }
}
