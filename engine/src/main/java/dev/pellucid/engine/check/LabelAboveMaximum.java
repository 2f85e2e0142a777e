package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.ClaimAboveLaw;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * A label that says more than the law allows, whatever the feed holds: brought to the moisture of
 * the law at the moisture that is aimed at.
 */
final class LabelAboveMaximum implements Rule {
  private static final Code CODE = new Code("label-above-maximum");

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
    for (ClaimAboveLaw above : recipe.judgement().aboveLaw()) {
      Finding finding = finding(recipe, above);
      recipe
          .judgement()
          .status(above.limit())
          .ifPresentOrElse(status -> out.accept(finding, status), () -> out.accept(finding));
    }
  }

  private static Finding finding(RuleContext recipe, ClaimAboveLaw above) {
    Limit limit = above.limit();
    LimitWords words = new LimitWords(limit);
    String name = above.claim().nutrient().name();
    return Finding.error(
            CODE,
            above.claim().written().span(),
            "the label says "
                + words.against(recipe, above.said(), " " + name + limit.basis().words()))
        .seeing("limit written", limit.origin().span())
        .helping("declare no more than the law allows")
        .about(new About(name, About.Side.MAX, List.of("label")));
  }
}
