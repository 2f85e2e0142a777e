package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A recipe without a process though something hangs on one: a pellet that is to float or to sink, a
 * limit on what heat and storage destroy, a digestibility that is told for pellets. An error where
 * it is approved, else a note of what could not be judged.
 */
final class ProcessMissing implements Rule {
  private static final Code CODE = new Code("process-missing");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ResolvedRecipe told = recipe.recipe();
    if (told.process().isTold()) {
      return;
    }
    List<String> unjudged = new ArrayList<>(NotJudged.byLoss(recipe));
    for (String name : NotJudged.names(recipe, LimitStatus.State.FEED_NOT_TOLD)) {
      if (!unjudged.contains(name)) {
        unjudged.add(name);
      }
    }
    boolean shaped = told.habit().isPresent();
    if (told.isApproved() && (shaped || !unjudged.isEmpty())) {
      out.accept(error(told, unjudged));
    } else if (!unjudged.isEmpty()) {
      out.accept(
          noting(
              Finding.note(
                  CODE,
                  told.declared(),
                  told.code() + " has no process, so " + NotJudged.count(unjudged) + " judged"),
              unjudged));
    }
  }

  private static Finding error(ResolvedRecipe told, List<String> unjudged) {
    String why =
        told.habit().isPresent()
            ? ", and its habit, " + told.habit().get() + ", needs one"
            : ", and limits depend on what heat and storage leave";
    Finding finding = Finding.error(CODE, told.declared(), told.code() + " has no process" + why);
    return noting(finding, unjudged);
  }

  private static Finding noting(Finding finding, List<String> unjudged) {
    Finding told =
        unjudged.isEmpty()
            ? finding
            : finding.noting(NotJudged.words("no process is given", unjudged));
    return told.helping(
        "add a section process: grind, blend, the die, the dryer, pack and store, as it is made");
  }
}
