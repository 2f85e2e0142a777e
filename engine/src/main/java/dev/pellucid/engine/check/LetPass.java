package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Waiver;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A limit that a recipe breaks and that its waiver lets pass.
 *
 * @param finding what would be said without the waiver
 */
public record LetPass(Finding finding, Waiver waiver) {

  /**
   * What the waivers of a recipe let pass, in the order of its limits. A recipe with waivers is
   * computed once more without them; one that has none costs nothing.
   */
  public static List<LetPass> of(Inspection recipe) {
    boolean any = recipe.verdicts().stream().anyMatch(LetPass::keptUnderWaiver);
    if (!any) {
      return List.of();
    }
    ResolvedRecipe bare = recipe.recipe().withoutWaivers();
    Computation computed = recipe.computer().compute(bare);
    return computed.feed().map(feed -> of(recipe, bare, computed, feed)).orElse(List.of());
  }

  private static boolean keptUnderWaiver(Verdict verdict) {
    return verdict.limit().waiver().isPresent() && verdict.keeps();
  }

  private static List<LetPass> of(
      Inspection recipe, ResolvedRecipe bare, Computation computed, ComputedFeed feed) {
    Inspection without =
        new Inspection(
            bare,
            recipe.larder(),
            recipe.computer(),
            computed.balances(),
            computed.feed(),
            Judge.verdicts(feed),
            recipe.floor(),
            recipe.day());
    List<Finding> said = new ArrayList<>();
    Rules.LIMITS.forEach(rule -> rule.look(without, said::add));
    List<LetPass> passed = new ArrayList<>();
    for (int i = 0; i < recipe.verdicts().size(); i++) {
      Verdict waived = recipe.verdicts().get(i);
      Verdict strict = without.verdicts().get(i);
      if (keptUnderWaiver(waived) && !strict.keeps()) {
        said.stream()
            .filter(finding -> Standing.names(finding, strict.limit()))
            .findFirst()
            .map(finding -> new LetPass(finding, waived.limit().waiver().orElseThrow()))
            .ifPresent(passed::add);
      }
    }
    return passed;
  }
}
