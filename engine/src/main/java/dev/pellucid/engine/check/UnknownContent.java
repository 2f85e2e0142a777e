package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Composition;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Limits that cannot be judged, told once for each ingredient that stands most in the way: it does
 * not tell what would break them, and what bounds that, if anything does, is above the limit. It is
 * so of maxima, and of the lower sum of a ratio with a minimum. An error where a bound is passed,
 * for then even a pure guess says that the limit may be broken.
 */
final class UnknownContent implements Rule {
  private static final Code CODE = new Code("unknown-content");
  private static final int NAMED = 6;

  /** A limit and the rows that keep it from being judged, the one most in the way first. */
  private record Unjudged(LimitStatus status, List<Row> rows) {
    static Unjudged of(ComputedFeed feed, LimitStatus status) {
      Unjudged all = new Unjudged(status, feed.rows());
      List<Row> rows =
          feed.rows().stream()
              .filter(row -> row.kg(Scenario.RICHEST) > 0 && all.untold(row).findAny().isPresent())
              .sorted(Comparator.comparingDouble(all::weight).reversed())
              .toList();
      return new Unjudged(status, rows);
    }

    Limit limit() {
      return status.limit();
    }

    /** Whether what bounds the content is above the limit; else nothing bounds it. */
    boolean passesBound() {
      return status.state().hangsOnContent();
    }

    /** How much may be in it, or where nothing bounds that, how much there is of it. */
    private double weight(Row row) {
      return passesBound()
          ? untold(row).mapToDouble(one -> row.amount(Scenario.RICHEST, one.index())).sum()
          : row.kg(Scenario.RICHEST);
    }

    /** Whether what is not told may break what must be kept; guidance need not. */
    boolean mayBreak() {
      return passesBound() && limit().origin().kind().broken() == Severity.ERROR;
    }

    Row first() {
      return rows.get(0);
    }

    /** What a row does not tell and would have to. */
    Stream<Nutrient> untold(Row row) {
      Composition told = row.composition();
      return nutrients(limit())
          .filter(
              one -> passesBound() ? told.isUnknown(one.index()) : told.isUnbounded(one.index()));
    }
  }

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
    if (recipe.feed().isPresent()) {
      look(recipe, recipe.feed().get(), out);
    }
  }

  private static void look(RuleContext recipe, ComputedFeed feed, Consumer<Finding> out) {
    Map<String, List<Unjudged>> byIngredient = new TreeMap<>();
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isAsTold() || status.state().hangsOnContent()) {
        Unjudged one = Unjudged.of(feed, status);
        String name = one.first().ingredient().name();
        byIngredient.computeIfAbsent(name, key -> new ArrayList<>()).add(one);
      }
    }
    for (List<Unjudged> same : byIngredient.values()) {
      out.accept(finding(recipe, same));
    }
  }

  private static boolean isMaximum(Limit limit) {
    return limit.side() == Bound.Side.MAX;
  }

  private static Finding finding(RuleContext recipe, List<Unjudged> same) {
    Unjudged one = same.get(0);
    String ingredient = one.first().ingredient().name();
    List<String> untold =
        same.stream()
            .flatMap(unjudged -> unjudged.untold(unjudged.first()))
            .map(Nutrient::name)
            .distinct()
            .sorted()
            .toList();
    String headline = ingredient + " does not give its " + listed(untold) + ", so " + limits(same);
    Span span = one.first().line().name();
    Finding finding =
        same.stream().anyMatch(Unjudged::mayBreak)
            ? Finding.error(CODE, span, headline)
            : Finding.warning(CODE, span, headline);
    finding =
        finding
            .labelled(untold.size() == 1 ? "does not give it" : "does not give them")
            .seeing("limit written", one.limit().origin().span());
    List<String> others =
        same.stream()
            .flatMap(unjudged -> unjudged.rows().stream())
            .map(row -> row.ingredient().name())
            .filter(name -> !name.equals(ingredient))
            .distinct()
            .toList();
    if (same.size() == 1 && one.passesBound()) {
      String most = BrokenLimit.headline(recipe, one.limit(), one.status().verdict().atWorst());
      finding = finding.noting("with the most that it can be, " + most);
    }
    if (!others.isEmpty()) {
      finding = finding.noting("not given by " + few(others) + " either");
    }
    return finding
        .helping(
            "write in "
                + one.first().ingredient().declared().file().path()
                + " how much it holds, with its source, or none where there is none")
        .about(new About(ingredient, About.Side.NONE, one.first().path()));
  }

  /** So few that one reads them all; of many the first. */
  private static String listed(List<String> names) {
    if (names.size() == 1) {
      return names.get(0);
    }
    int last = names.size() - 1;
    return names.size() > NAMED + 2
        ? few(names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private static String few(List<String> names) {
    String few = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    return names.size() > NAMED ? few + " and " + (names.size() - NAMED) + " more" : few;
  }

  private static String limits(List<Unjudged> same) {
    boolean maxima = same.stream().allMatch(one -> isMaximum(one.limit()));
    if (same.size() == 1) {
      String text = same.get(0).limit().subject().text();
      return "the " + (maxima ? "maximum" : "minimum") + " of " + text + " cannot be judged";
    }
    return same.size() + (maxima ? " maxima" : " limits") + " cannot be judged";
  }

  /** What breaks the limit where it is more than told. */
  private static Stream<Nutrient> nutrients(Limit limit) {
    Subject subject = limit.subject();
    boolean byMoreBelow = subject.isRatio() && !isMaximum(limit);
    return (byMoreBelow ? subject.loweredBy() : subject.raisedBy()).stream();
  }
}
