package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.resolve.Line;
import java.util.List;

/**
 * Why an ingredient may not rise above its share of today, or come in.
 *
 * @param ingredient its name
 * @param file that does not tell what is missing, below the folder
 * @param missing what it does not tell, in words: {@code no cap for common-carp}
 */
public record Refusal(String ingredient, String file, String missing) {
  static List<Refusal> of(RuleContext recipe, Line line) {
    return List.of();
  }
}
