package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Comparator;
import java.util.List;

/** A figure of the label that cannot be computed: ingredients that do not tell it could decide. */
final class LabelCannotBeTold implements Rule {
  private static final Code CODE = new Code("label-cannot-be-told");
  private static final int NAMED = 5;

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
      if (verdict.outcome() == Outcome.CANNOT_TELL) {
        recipe
            .feed()
            .filter(feed -> !silent(feed, verdict.claim().nutrient()).isEmpty())
            .ifPresent(feed -> out.accept(finding(verdict, feed)));
      }
    }
  }

  private static Finding finding(LabelVerdict verdict, ComputedFeed feed) {
    Nutrient nutrient = verdict.claim().nutrient();
    List<String> silent = silent(feed, nutrient);
    String more = silent.size() > NAMED ? " and " + (silent.size() - NAMED) + " more" : "";
    return Finding.warning(
            CODE,
            verdict.claim().written().span(),
            "the label says "
                + new LabelWords(verdict).said()
                + " "
                + nutrient.name()
                + ", and the feed cannot be computed so far")
        .noting(
            "not given by "
                + String.join(", ", silent.subList(0, Math.min(NAMED, silent.size())))
                + more)
        .helping("add the content to these ingredients, or write none where there is none")
        .helping("or take the line off the label, where the law does not ask for it")
        .about(new About(nutrient.name(), About.Side.NONE, List.of("label")));
  }

  private static List<String> silent(ComputedFeed feed, Nutrient nutrient) {
    return feed.rows().stream()
        .filter(row -> row.composition().isUnknown(nutrient.index()))
        .sorted(Comparator.<Row>comparingDouble(Row::kg).reversed())
        .map(row -> row.ingredient().name())
        .distinct()
        .toList();
  }
}
