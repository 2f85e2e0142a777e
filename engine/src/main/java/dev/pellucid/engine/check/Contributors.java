package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Which lines bring what a limit is about, the largest first, each as a part of one. Of a ratio it
 * is the upper sum that is looked at. Moisture has none: most of it comes from the process.
 */
final class Contributors {
  private final List<Contributor> largestFirst;

  private Contributors(List<Contributor> largestFirst) {
    this.largestFirst = largestFirst;
  }

  /**
   * What one line brings.
   *
   * @param part of all that is brought
   * @param most the ingredient that brings the most of it
   */
  record Contributor(Line line, double part, Row most) {}

  /**
   * Only what is told, where the figure that is shown is what is told alone; at the end of the
   * verdict, or as expected where nothing at all is left there.
   */
  static Contributors of(ComputedFeed feed, Verdict verdict) {
    boolean told = verdict.shown().certainty() != Certainty.TOLD;
    Subject subject = verdict.limit().subject();
    Contributors there = of(feed, row -> brings(feed, subject, verdict.end(), told, row));
    return there.largestFirst.isEmpty()
        ? of(feed, row -> brings(feed, subject, Scenario.EXPECTED, told, row))
        : there;
  }

  private static Contributors of(ComputedFeed feed, ToDoubleFunction<Row> brings) {
    List<Contributor> found = new ArrayList<>();
    double whole = feed.rows().stream().mapToDouble(brings).sum();
    for (Line line : whole > 0 ? feed.recipe().taken() : List.<Line>of()) {
      List<Row> rows = feed.rows(line);
      double sum = rows.stream().mapToDouble(brings).sum();
      rows.stream()
          .max(Comparator.comparingDouble(brings))
          .filter(row -> sum > 0)
          .ifPresent(row -> found.add(new Contributor(line, sum / whole, row)));
    }
    found.sort(Comparator.comparingDouble(Contributor::part).reversed());
    return new Contributors(List.copyOf(found));
  }

  List<Contributor> largestFirst() {
    return largestFirst;
  }

  Optional<Contributor> largest() {
    return largestFirst.stream().findFirst();
  }

  private static double brings(
      ComputedFeed feed, Subject subject, Scenario end, boolean told, Row row) {
    return subject.byKind(
        sum -> brings(feed, sum.nutrients(), end, told, row),
        ratio -> brings(feed, ratio.over().nutrients(), end, told, row),
        inclusion -> Readings.isOneOf(row, inclusion.names()) ? row.kg() : 0.0,
        cost -> row.money());
  }

  private static double brings(
      ComputedFeed feed, List<Nutrient> nutrients, Scenario end, boolean told, Row row) {
    double amount = 0;
    for (Nutrient nutrient : nutrients) {
      boolean water = feed.nutrients().isMoisture(nutrient.index());
      boolean open = told && row.composition().mayBeMore(nutrient.index());
      amount += water ? 0 : row.amount(open ? Scenario.EXPECTED : end, nutrient.index());
    }
    return amount;
  }
}
