package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/** A maximum that cannot be judged: an ingredient does not tell it, and nothing bounds it. */
final class UnknownContent implements Rule {
  private static final Code CODE = new Code("unknown-content");
  private static final int NAMED = 6;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    recipe
        .feed()
        .ifPresent(
            feed ->
                recipe.verdicts().stream()
                    .filter(v -> v.limit().side() == Bound.Side.MAX)
                    .filter(v -> v.keeps() && v.reading().unbounded())
                    .forEach(v -> out.accept(finding(feed, v.limit()))));
  }

  private static Finding finding(ComputedFeed feed, Limit limit) {
    List<Row> rows =
        feed.rows().stream()
            .filter(row -> nutrients(limit.subject()).stream().anyMatch(n -> unbounded(row, n)))
            .sorted(Comparator.<Row>comparingDouble(row -> row.kg()).reversed())
            .toList();
    List<String> names = rows.stream().map(row -> row.ingredient().name()).distinct().toList();
    Span span =
        rows.stream().findFirst().map(row -> row.line().name()).orElse(feed.recipe().declared());
    String text = limit.subject().text();
    return Finding.warning(CODE, span, "the maximum of " + text + " cannot be judged")
        .labelled("does not tell it")
        .seeing("limit written", limit.origin().span())
        .noting("not told by " + first(names))
        .helping("add the content, or write none where there is none")
        .about(new About(text, About.Side.MAX, List.of()));
  }

  /** Of a vitamin nearly every ingredient tells nothing: the first few show which. */
  private static String first(List<String> names) {
    String few = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    return names.size() > NAMED ? few + " and " + (names.size() - NAMED) + " more" : few;
  }

  private static boolean unbounded(Row row, Nutrient nutrient) {
    return row.composition().unbounded().get(nutrient.index());
  }

  private static List<Nutrient> nutrients(Subject subject) {
    if (subject instanceof Subject.Nutrients sum) {
      return sum.nutrients();
    }
    if (subject instanceof Subject.Ratio ratio) {
      List<Nutrient> both = new ArrayList<>(ratio.over().nutrients());
      both.addAll(ratio.under().nutrients());
      return both;
    }
    return List.of();
  }
}
