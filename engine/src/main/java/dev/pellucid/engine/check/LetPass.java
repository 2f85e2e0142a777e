package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Waiver;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A limit that a recipe breaks and that its waiver lets pass.
 *
 * @param finding what would be said without the waiver
 */
public record LetPass(Finding finding, Waiver waiver) {

  /** What the waivers of a recipe let pass, in the order of its limits. */
  public static List<LetPass> of(RuleContext recipe) {
    List<LimitStatus> waived = new ArrayList<>();
    for (LimitStatus status : recipe.limits()) {
      if (status.isLetPass()) {
        waived.add(status);
      }
    }
    if (waived.isEmpty()) {
      return List.of();
    }
    List<Remark> said = Rules.ofLimits(recipe.withoutWaivers());
    List<LetPass> passed = new ArrayList<>();
    for (LimitStatus status : waived) {
      Optional<Finding> error = Remark.errorAbout(status.asWritten(), said);
      if (error.isPresent()) {
        passed.add(new LetPass(error.get(), status.limit().waiver().orElseThrow()));
      }
    }
    return passed;
  }
}
