package dev.pellucid.engine.check;

import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * A declaration for which the label rules tell no tolerance: nobody can say what would break it.
 */
final class LabelWithoutTolerance implements Rule {
  private static final Code CODE = new Code("label-without-tolerance");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (LabelVerdict verdict : recipe.judgement().claims()) {
      if (verdict.outcome() == Outcome.NO_TOLERANCE) {
        recipe.tables().label().ifPresent(rules -> out.accept(finding(verdict, rules)));
      }
    }
  }

  private static Finding finding(LabelVerdict verdict, LabelRules rules) {
    String name = verdict.claim().nutrient().name();
    return Finding.warning(
            CODE,
            verdict.claim().written().span(),
            "the label rules give no tolerance for " + name + ", so its figure is not judged")
        .seeing("label rules", rules.declared())
        .helping("add a tolerance for " + name + ", or guarantee it with min or max")
        .about(new About(name, About.Side.NONE, List.of("label")));
  }
}
