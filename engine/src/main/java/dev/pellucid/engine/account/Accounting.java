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
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Sum;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Takes the account of a computed feed. */
final class Accounting {
  private final ComputedFeed feed;

  Accounting(ComputedFeed feed) {
    this.feed = feed;
  }

  Account account(List<LimitStatus> limits) {
    Map<String, Held> held = new LinkedHashMap<>();
    for (LimitStatus limit : limits) {
      Held one = Held.of(limit);
      held.put(one.demand().key(), one);
    }
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
    List<LineShare> lines = new ArrayList<>();
    for (Line line : feed.recipe().taken()) {
      lines.add(
          new LineShare(
              line.material().name(),
              line.place(),
              line.share(),
              line.onTop(),
              line.kgPerWeighing()));
    }
    return lines;
  }

  private Map<String, LineCost> costs() {
    Map<String, List<Row>> byLine = new LinkedHashMap<>();
    for (Row row : feed.rows()) {
      byLine.computeIfAbsent(row.line().material().name(), none -> new ArrayList<>(1)).add(row);
    }
    Map<String, LineCost> costs = new LinkedHashMap<>();
    for (Map.Entry<String, List<Row>> line : byLine.entrySet()) {
      costs.put(line.getKey(), cost(line.getValue()));
    }
    return costs;
  }

  private LineCost cost(List<Row> rows) {
    Sum kg = new Sum();
    for (Row row : rows) {
      kg.add(row.kgRichest());
    }
    double money = money(rows);
    return new LineCost(money / feed.bagged(), kg.total() > 0 ? money / kg.total() : 0);
  }

  private static double money(List<Row> rows) {
    Sum money = new Sum();
    for (Row row : rows) {
      money.add(row.money());
    }
    return money.total();
  }

  private Map<String, Content> contents() {
    Set<String> lossUntold = new HashSet<>();
    for (RetentionGap gap : feed.retentionGaps()) {
      lossUntold.add(gap.stability());
    }
    Map<String, Content> contents = new LinkedHashMap<>();
    Readings readings = new Readings(feed);
    for (Nutrient nutrient : feed.nutrients().inOrder()) {
      Reading reading = readings.of(nutrient);
      contents.put(
          nutrient.name(),
          new Content(
              nutrient.name(),
              nutrient.unit(),
              reading.value(),
              reading.certainty(),
              lossUntold.isEmpty() || isLossTold(nutrient, lossUntold)));
    }
    return contents;
  }

  private boolean isLossTold(Nutrient nutrient, Set<String> lossUntold) {
    if (lossUntold.contains(nutrient.stability())) {
      return false;
    }
    for (Row row : feed.rows()) {
      String own = row.ingredient().stability().get(nutrient.name());
      if (own != null && lossUntold.contains(own)) {
        return false;
      }
    }
    return true;
  }

  private List<Inclusion> inclusions() {
    Map<String, List<Row>> byIngredient = new TreeMap<>();
    for (Row row : feed.rows()) {
      byIngredient.computeIfAbsent(row.ingredient().name(), none -> new ArrayList<>(1)).add(row);
    }
    List<Inclusion> inclusions = new ArrayList<>();
    for (Map.Entry<String, List<Row>> one : byIngredient.entrySet()) {
      inclusions.add(inclusion(one.getKey(), one.getValue()));
    }
    return inclusions;
  }

  private Inclusion inclusion(String ingredient, List<Row> rows) {
    Sum kg = new Sum();
    Set<String> through = new LinkedHashSet<>();
    for (Row row : rows) {
      kg.add(row.kg());
      if (row.path().size() > 1) {
        through.add(row.path().get(0));
      }
    }
    return new Inclusion(ingredient, kg.total(), List.copyOf(through), money(rows) / feed.bagged());
  }
}
