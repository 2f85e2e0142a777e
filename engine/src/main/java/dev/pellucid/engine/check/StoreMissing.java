package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/**
 * A feed that is packed or stored and does not say how long it keeps: no bag has a last day, and
 * what is left of its vitamins then is unknown. An error where the recipe is approved, else a note
 * of what could not be judged.
 */
final class StoreMissing implements Rule {
  private static final Code CODE = new Code("store-missing");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ResolvedRecipe told = recipe.recipe();
    Passes passes = told.process();
    Optional<Pass> waits = waits(passes);
    if (waits.isPresent() && passes.setting(Step.STORE, Property.SHELF_LIFE).isEmpty()) {
      List<String> unjudged = NotJudged.byLoss(recipe);
      if (told.isApproved() || !unjudged.isEmpty()) {
        out.accept(finding(told, waits.get(), unjudged));
      }
    }
  }

  private static Optional<Pass> waits(Passes passes) {
    Optional<Pass> store = passes.first(Step.STORE);
    return store.isPresent() ? store : passes.first(Step.PACK);
  }

  private static Finding finding(ResolvedRecipe told, Pass waits, List<String> unjudged) {
    String headline =
        waits.step() == Step.STORE
            ? "the store has no shelf life"
            : "the feed is packed, and nothing says how long it keeps";
    Finding finding =
        told.isApproved()
            ? Finding.error(CODE, waits.span(), headline)
            : Finding.note(
                CODE, waits.span(), headline + ", so " + NotJudged.count(unjudged) + " judged");
    if (!unjudged.isEmpty()) {
      finding = finding.noting(NotJudged.words("no shelf life is given", unjudged));
    }
    return finding
        .noting("without it no bag has a last day, and no minimum is held at the end of the store")
        .helping("add a line like: store shelf-life 60 d, with the days that you can guarantee");
  }
}
