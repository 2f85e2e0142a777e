package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedPremix.Part;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A finished feed as something that is weighed again: a part for each ingredient, as much of it as
 * its share of the dry matter, with the moisture of the feed and with what the process has left of
 * each nutrient. So the parts together hold what the finished feed holds, on target and fresh, and
 * whatever asks for an ingredient still finds it.
 */
public final class Finished {
  private final ComputedFeed feed;
  private final Balance balance;
  private final double dryMatter;

  private Finished(ComputedFeed feed) {
    this.feed = feed;
    this.balance = feed.balances().expected();
    this.dryMatter = feed.rows().stream().mapToDouble(Row::dryMatter).sum();
  }

  /** What rework of the feed is made of. */
  public static Material.Reworked of(ComputedFeed feed) {
    String code = feed.recipe().code();
    ResolvedPremix made =
        new ResolvedPremix(
            code,
            "Rework of " + code,
            Optional.empty(),
            new Finished(feed).parts(),
            List.of(),
            Optional.empty(),
            new Passes(List.of()),
            Optional.empty(),
            feed.recipe().declared());
    return new Material.Reworked(made, feed.recipe().species());
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    Share left = Share.WHOLE;
    List<Row> rows = feed.rows().stream().filter(row -> row.dryMatter() > 0).toList();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      double of = row.dryMatter() / dryMatter;
      boolean last = i + 1 == rows.size();
      Share share = last ? left : new Share(BigDecimal.valueOf(of).movePointRight(2));
      left = left.minus(share);
      parts.add(new Part(part(row, i), share, share, Share.ZERO, row.line().name()));
    }
    return parts;
  }

  /**
   * An ingredient as the process has left it.
   *
   * @param index tells it apart from others of the same name in the cache of compositions
   */
  private Material.Single part(Row row, int index) {
    Ingredient ingredient = row.ingredient();
    Optional<Source> source = ingredient.contents().stream().map(ContentBlock::source).findFirst();
    Map<String, Content> contents = new HashMap<>();
    for (Nutrient nutrient : feed.nutrients().inOrder()) {
      boolean told = !row.composition().isUnknown(nutrient.index());
      if (told && nutrient.formula().isEmpty() && source.isPresent()) {
        contents.put(nutrient.name(), content(row, nutrient, source.get()));
      }
    }
    List<ContentBlock> blocks =
        source
            .map(
                from ->
                    List.of(
                        new ContentBlock(Optional.empty(), from, OptionalInt.empty(), contents)))
            .orElse(List.of());
    String lot = "rework " + feed.recipe().code() + " " + index;
    return new Material.Single(
        ingredient.worked(lot, blocks),
        row.price().map(price -> paid(price, row.kgRichest() / row.finished())));
  }

  private Content content(Row row, Nutrient nutrient, Source source) {
    if (nutrient.name().equals(Nutrients.MOISTURE)) {
      return content(balance.moisture(), balance.moisture(), OptionalDouble.empty(), row, source);
    }
    int index = nutrient.index();
    double per = row.finished();
    Composition composition = row.composition();
    double value = row.amount(Scenario.EXPECTED, index) / per;
    // Of "below X" there may be as much as X, and there may be none.
    boolean open = composition.high().at(index) > composition.expected().at(index);
    double most =
        open
            ? Math.max(value, row.amount(Scenario.RICHEST, Scenario.EXPECTED, index) / per)
            : value;
    boolean spread = !composition.isSpreadUnknown(index) && !composition.isSpreadAssumed(index);
    OptionalDouble deviation =
        spread ? OptionalDouble.of(row.deviation(index) / per) : OptionalDouble.empty();
    return content(value, most, deviation, row, source);
  }

  private Content content(double low, double high, OptionalDouble spread, Row row, Source source) {
    String from = "of the finished feed " + feed.recipe().code();
    return new Content(low, high, spread, from, row.ingredient().declared(), source);
  }

  /** What was paid for the ingredient, on what is left of it. */
  private static Price paid(Price price, double times) {
    return new Price(
        price.ingredient(),
        price.from(),
        price.perKg() * times,
        price.asWritten(),
        price.source(),
        price.place());
  }
}
