package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Tolerance.Side;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;
import java.util.Optional;

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
    List<LabelVerdict> claims = recipe.judgement().claims();
    for (int i = 0; i < claims.size(); i++) {
      if (claims.get(i).outcome() == outcome) {
        out.accept(finding(claims.get(i), help(recipe, i)));
      }
    }
  }

  /** Where limits are broken, what meets them may put the label right too. */
  private static String help(RuleContext recipe, int claim) {
    Optional<Fixing.Cure> cure =
        Fix.broken(recipe).isEmpty() ? Optional.empty() : recipe.fixing().cure(recipe);
    List<LabelVerdict> claims =
        cure.isPresent() ? cure.get().tried().judgement().claims() : List.of();
    String instead = new LabelWords(recipe.judgement().claims().get(claim)).instead();
    return claim < claims.size() && claims.get(claim).outcome() == Outcome.KEPT
        ? cure.orElseThrow().words() + ", and the label too"
        : "write " + instead + " on the label, or change the recipe";
  }

  private Finding finding(LabelVerdict verdict, String help) {
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
        .helping(help)
        .about(
            new About(
                verdict.claim().nutrient().name(),
                verdict.side() == Side.BELOW ? About.Side.MIN : About.Side.MAX,
                List.of("label")));
  }
}
