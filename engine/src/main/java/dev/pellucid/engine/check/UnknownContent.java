package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.End;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * A limit that seems kept and cannot be judged: an ingredient does not tell what would break it,
 * and nothing bounds that. It is so of a maximum, and of the lower sum of a ratio with a minimum.
 */
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
                    .filter(v -> v.keeps() && v.reading().unbounded())
                    .filter(v -> mayBreak(v.limit()))
                    .forEach(v -> out.accept(finding(feed, v.limit()))));
  }

  /** What is not told can only raise a sum; a ratio it can move either way. */
  private static boolean mayBreak(Limit limit) {
    return isMaximum(limit) || limit.subject() instanceof Subject.Ratio;
  }

  private static boolean isMaximum(Limit limit) {
    return limit.side() == Bound.Side.MAX;
  }

  private static Finding finding(ComputedFeed feed, Limit limit) {
    List<Row> rows =
        feed.rows().stream()
            .filter(row -> row.kg(End.RICHEST) > 0)
            .filter(row -> nutrients(limit).stream().anyMatch(n -> unbounded(row, n)))
            .sorted(Comparator.<Row>comparingDouble(row -> row.kg()).reversed())
            .toList();
    List<String> names = rows.stream().map(row -> row.ingredient().name()).distinct().toList();
    Span span =
        rows.stream().findFirst().map(row -> row.line().name()).orElse(feed.recipe().declared());
    String text = limit.subject().text();
    String bound = isMaximum(limit) ? "maximum" : "minimum";
    return Finding.warning(CODE, span, "the " + bound + " of " + text + " cannot be judged")
        .labelled("does not tell it")
        .seeing("limit written", limit.origin().span())
        .noting("not told by " + first(names))
        .helping("add the content, or write none where there is none")
        .about(new About(text, isMaximum(limit) ? About.Side.MAX : About.Side.MIN, List.of()));
  }

  /** Of a vitamin nearly every ingredient tells nothing: the first few show which. */
  private static String first(List<String> names) {
    String few = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    return names.size() > NAMED ? few + " and " + (names.size() - NAMED) + " more" : few;
  }

  private static boolean unbounded(Row row, Nutrient nutrient) {
    return row.composition().unbounded().get(nutrient.index());
  }

  /** What breaks the limit where it is more than told. */
  private static List<Nutrient> nutrients(Limit limit) {
    if (limit.subject() instanceof Subject.Ratio ratio) {
      return (isMaximum(limit) ? ratio.over() : ratio.under()).nutrients();
    }
    return limit.subject() instanceof Subject.Nutrients sum ? sum.nutrients() : List.of();
  }
}
