package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.check.LetPass;
import dev.pellucid.engine.check.Standing;
import dev.pellucid.engine.outcome.LimitOutcome;
import dev.pellucid.engine.outcome.RecipeOutcome;
import dev.pellucid.engine.outcome.WaivedFinding;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Shown;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;
import java.util.Optional;

/** One recipe as it was looked at, to the little that reports need of it: no feed, no figure. */
final class Outcomes {
  private Outcomes() {}

  /** Of a recipe that every rule has looked at. */
  static RecipeOutcome of(Checked recipe) {
    Optional<Inspection> judged = recipe.recipe().filter(one -> one.feed().isPresent());
    return judged.isPresent()
        ? checked(recipe.path(), judged.get(), recipe.findings())
        : unchecked(recipe.path(), recipe.code(), recipe.mendFirst(), recipe.findings());
  }

  /** One whose limits were judged. */
  private static RecipeOutcome checked(String path, Inspection recipe, List<Finding> said) {
    return new RecipeOutcome(
        path,
        recipe.recipe().code(),
        true,
        List.of(),
        Standing.of(recipe, said).stream().map(Outcomes::limit).toList(),
        LetPass.of(recipe).stream().map(Outcomes::waived).toList(),
        List.of());
  }

  /** One whose limits could not be judged. */
  private static RecipeOutcome unchecked(
      String path, String code, List<String> mendFirst, List<Finding> said) {
    List<Finding> errors =
        said.stream().filter(finding -> finding.severity() == Severity.ERROR).sorted().toList();
    return RecipeOutcome.unchecked(path, code, mendFirst, Shown.of(errors).findings());
  }

  private static LimitOutcome limit(Standing standing) {
    return new LimitOutcome(standing.name(), state(standing.state()), standing.finding());
  }

  private static LimitOutcome.State state(Standing.State state) {
    return switch (state) {
      case KEPT -> LimitOutcome.State.KEPT;
      case BROKEN -> LimitOutcome.State.BROKEN;
      case NOT_JUDGED -> LimitOutcome.State.NOT_JUDGED;
      case KEPT_AS_TOLD -> LimitOutcome.State.KEPT_AS_TOLD;
    };
  }

  private static WaivedFinding waived(LetPass passed) {
    return new WaivedFinding(
        passed.finding(),
        passed.waiver().span(),
        passed.waiver().until().toString(),
        passed.waiver().by(),
        passed.waiver().because());
  }
}
