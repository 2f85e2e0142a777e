package dev.pellucid.engine.account;

import dev.pellucid.engine.account.Account.Content;
import dev.pellucid.engine.account.Account.Inclusion;
import dev.pellucid.engine.account.Account.LineCost;
import dev.pellucid.engine.account.Account.LineShare;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Takes the account of a computed feed. */
final class Accounting {
  private final ComputedFeed feed;

  Accounting(ComputedFeed feed) {
    this.feed = feed;
  }

  Account account(List<LimitStatus> limits) {
    Map<String, Held> held = new LinkedHashMap<>();
    Held.all(limits).forEach(one -> held.put(one.demand().key(), one));
    return new Account(
        lines(),
        feed.bagged(),
        feed.balances().expected().moisture(),
        feed.costPerKg(),
        costs(),
        feed.unpriced(),
        contents(),
        inclusions(),
        held);
  }

  private List<LineShare> lines() {
    return feed.recipe().lines().stream()
        .map(
            line ->
                new LineShare(
                    line.material().name(),
                    line.place(),
                    line.share(),
                    line.onTop(),
                    line.kgPerWeighing()))
        .toList();
  }

  private Map<String, LineCost> costs() {
    Map<String, List<Row>> byLine =
        feed.rows().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.line().material().name(), LinkedHashMap::new, Collectors.toList()));
    Map<String, LineCost> costs = new LinkedHashMap<>();
    byLine.forEach((name, rows) -> costs.put(name, cost(rows)));
    return costs;
  }

  private LineCost cost(List<Row> rows) {
    double money = money(rows);
    double kg = rows.stream().mapToDouble(Row::kgRichest).sum();
    return new LineCost(money / feed.bagged(), kg > 0 ? money / kg : 0);
  }

  private static double money(List<Row> rows) {
    return rows.stream().mapToDouble(Row::money).sum();
  }

  private Map<String, Content> contents() {
    Map<String, Content> contents = new LinkedHashMap<>();
    Readings readings = new Readings(feed);
    for (Nutrient nutrient : feed.nutrients().inOrder()) {
      Subject alone = new Subject.Nutrients(List.of(nutrient), nutrient.name());
      Reading reading = readings.at(alone, new Basis.AsFed(), Scenario.EXPECTED);
      contents.put(
          nutrient.name(),
          new Content(
              nutrient.name(),
              nutrient.unit(),
              reading.value(),
              reading.certainty(),
              isLossTold(nutrient)));
    }
    return contents;
  }

  private boolean isLossTold(Nutrient nutrient) {
    return feed.retentionGaps().stream()
        .map(RetentionGap::stability)
        .noneMatch(
            gap ->
                gap.equals(nutrient.stability())
                    || feed.rows().stream()
                        .anyMatch(
                            row -> gap.equals(row.ingredient().stability().get(nutrient.name()))));
  }

  private List<Inclusion> inclusions() {
    Map<String, List<Row>> rows =
        feed.rows().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.ingredient().name(), TreeMap::new, Collectors.toList()));
    return rows.entrySet().stream()
        .map(entry -> inclusion(entry.getKey(), entry.getValue()))
        .toList();
  }

  private Inclusion inclusion(String ingredient, List<Row> rows) {
    List<String> through =
        rows.stream()
            .filter(row -> row.path().size() > 1)
            .map(row -> row.path().get(0))
            .distinct()
            .toList();
    return new Inclusion(
        ingredient, rows.stream().mapToDouble(Row::kg).sum(), through, money(rows) / feed.bagged());
  }
}
