package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/** A maximum that the feed keeps when handling overage is lost and breaks when it is not. */
final class OverageBreaksMaximum implements Rule {
  private static final Code CODE = new Code("overage-breaks-maximum");

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
    for (LimitStatus status : recipe.limits()) {
      if (status.withoutOverage().isPresent()) {
        double without = status.withoutOverage().getAsDouble();
        out.accept(finding(recipe, status.verdict(), without), status);
      }
    }
  }

  private static Finding finding(RuleContext recipe, Verdict broken, double without) {
    Limit limit = broken.limit();
    LimitWords words = new LimitWords(limit);
    Optional<Line> line = line(recipe, broken);
    Span span = line.map(Line::name).orElse(recipe.recipe().declared());
    String headline =
        "with its handling overage "
            + limit.subject().text()
            + " is "
            + words.against(recipe, broken.shown().figure(), words.terms());
    return Finding.of(CODE, limit.origin().kind().broken(), span, headline)
        .labelled("part of it is weighed on top")
        .seeing("limit written", limit.origin().span())
        .noting("without overage it is " + words.figure(without) + words.unit())
        .helping(
            line.flatMap(l -> HandlingFix.words(recipe, broken, l))
                .orElse("lower what is weighed on top for handling"))
        .about(
            new About(
                limit.subject().text(),
                About.Side.MAX,
                line.map(l -> List.of(l.material().name())).orElse(List.of())));
  }

  /** The largest contributor among the lines with overage. */
  private static Optional<Line> line(RuleContext recipe, Verdict broken) {
    return recipe
        .feed()
        .flatMap(
            feed ->
                Contributors.of(feed, broken).largestFirst().stream()
                    .map(Contributors.Contributor::line)
                    .filter(Line::hasOnTop)
                    .findFirst());
  }
}
