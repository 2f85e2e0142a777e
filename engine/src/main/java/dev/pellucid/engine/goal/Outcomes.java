package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.LetPass;
import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.outcome.LimitOutcome;
import dev.pellucid.engine.outcome.RecipeOutcome;
import dev.pellucid.engine.outcome.WaivedFinding;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Shown;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One recipe as it was looked at, to what reports need of it: no feed, no figure. */
final class Outcomes {
  private Outcomes() {}

  /** Of a recipe that every rule has looked at. */
  static RecipeOutcome of(Checked recipe) {
    Optional<RuleContext> judged = recipe.recipe();
    return judged.isPresent() && judged.get().feed().isPresent()
        ? checked(recipe.path(), judged.get(), recipe.remarks())
        : unchecked(recipe.path(), recipe.code(), recipe.mendFirst(), recipe.findings());
  }

  /** One whose limits were judged. */
  private static RecipeOutcome checked(String path, RuleContext recipe, List<Remark> said) {
    List<LimitOutcome> limits = new ArrayList<>(recipe.limits().size());
    for (LimitStatus status : recipe.limits()) {
      limits.add(limit(status, said));
    }
    List<WaivedFinding> waived = new ArrayList<>();
    for (LetPass passed : LetPass.of(recipe)) {
      waived.add(waived(passed));
    }
    return new RecipeOutcome(
        path, recipe.recipe().code(), true, List.of(), limits, waived, List.of());
  }

  /** One whose limits could not be judged. */
  private static RecipeOutcome unchecked(
      String path, String code, List<String> mendFirst, List<Finding> said) {
    List<Finding> errors =
        said.stream().filter(finding -> finding.severity() == Severity.ERROR).sorted().toList();
    return RecipeOutcome.unchecked(path, code, mendFirst, Shown.of(errors));
  }

  /** A limit counts as broken too where it is so only once weights are rounded, or on the label. */
  private static LimitOutcome limit(LimitStatus status, List<Remark> said) {
    Optional<Finding> error = Remark.errorAbout(status, said);
    LimitOutcome.State state = error.isPresent() ? LimitOutcome.State.BROKEN : state(status);
    return new LimitOutcome(status.limit().name(), state, error);
  }

  private static LimitOutcome.State state(LimitStatus status) {
    return switch (status.state()) {
      case KEPT, KEPT_BY_WAIVER -> LimitOutcome.State.KEPT;
      case KEPT_AS_TOLD, KEPT_AS_TOLD_BY_WAIVER -> LimitOutcome.State.KEPT_AS_TOLD;
      case BROKEN, BROKEN_BY_OVERAGE ->
          status.limit().origin().kind() == Limit.Kind.GUIDANCE
              ? LimitOutcome.State.BEYOND_GUIDANCE
              : LimitOutcome.State.BROKEN;
      case CONTENT_NOT_TOLD, LOSS_NOT_TOLD, CONTENT_AND_LOSS_NOT_TOLD, FEED_NOT_TOLD ->
          LimitOutcome.State.NOT_JUDGED;
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
