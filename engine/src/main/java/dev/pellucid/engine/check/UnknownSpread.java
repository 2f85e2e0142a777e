package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Confidence is asked for, and for some content nothing says how far lots differ. */
final class UnknownSpread implements Rule {
  private static final Code CODE = new Code("unknown-spread");

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
    if (recipe.feed().isEmpty()) {
      return;
    }
    for (LimitStatus status : recipe.limits()) {
      Verdict verdict = status.verdict();
      if (status.limit().inBatches().isPresent() && verdict.reading().spreadUnknown()) {
        out.accept(finding(recipe.feed().get(), verdict));
      }
    }
  }

  private static Finding finding(ComputedFeed feed, Verdict verdict) {
    String text = verdict.limit().subject().text();
    String terms = new LimitWords(verdict.limit()).terms();
    Optional<Row> most = most(feed, verdict.limit().subject());
    Finding finding =
        Finding.warning(
                CODE,
                most.map(row -> row.line().name()).orElse(feed.recipe().declared()),
                text + terms + " is judged with too small a standard deviation between lots")
            .seeing("limit written", verdict.limit().origin().span());
    String name = most.map(row -> row.ingredient().name()).orElse("an ingredient");
    return finding
        .noting(name + " gives its content without saying how far lots differ")
        .helping("write ± after the content, or add " + text + " to practice/spreads.yaml")
        .about(new About(text, About.Side.NONE, List.of()));
  }

  /** Which of those without a spread brings the most. */
  private static Optional<Row> most(ComputedFeed feed, Subject subject) {
    List<Nutrient> nutrients = subject.nutrients();
    return feed.rows().stream()
        .filter(row -> without(row, nutrients).findAny().isPresent())
        .max(
            Comparator.comparingDouble(
                row ->
                    without(row, nutrients)
                        .mapToDouble(one -> row.amount(Scenario.EXPECTED, one.index()))
                        .sum()));
  }

  private static Stream<Nutrient> without(Row row, List<Nutrient> nutrients) {
    return nutrients.stream().filter(one -> row.composition().isSpreadUnknown(one.index()));
  }
}
