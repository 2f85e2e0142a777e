package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Tolerance.Side;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;

/**
 * A figure of the label that the feed does not bear out. The tolerance of the law is for sampling
 * and the laboratory, not for formulating: to spend it is a warning, to go beyond it an error.
 */
final class LabelJudgedBy implements Rule {
  private final Code code;
  private final Outcome outcome;

  LabelJudgedBy(String code, Outcome outcome) {
    this.code = new Code(code);
    this.outcome = outcome;
  }

  @Override
  public Code code() {
    return code;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (LabelVerdict verdict : recipe.judgement().claims()) {
      if (verdict.outcome() == outcome) {
        out.accept(finding(verdict));
      }
    }
  }

  private Finding finding(LabelVerdict verdict) {
    LabelWords words = new LabelWords(verdict);
    boolean beyond = outcome == Outcome.BEYOND;
    String headline =
        verdict.allowed().orElse(0) == 0
            ? words.headline()
            : words.headline()
                + (beyond
                    ? " and its tolerance ends at " + words.end()
                    : ": " + words.spent() + " of tolerance are spent");
    Finding finding =
        Finding.of(
            code,
            beyond ? Severity.ERROR : Severity.WARNING,
            verdict.claim().written().span(),
            headline);
    if (verdict.tolerance().isPresent()) {
      finding = finding.seeing("tolerance written", verdict.tolerance().get().place());
    }
    return finding
        .noting("a tolerance is for sampling and the laboratory, not for formulating")
        .helping("write " + words.instead() + " on the label, or change the recipe")
        .about(
            new About(
                verdict.claim().nutrient().name(),
                verdict.side() == Side.BELOW ? About.Side.MIN : About.Side.MAX,
                List.of("label")));
  }
}
