package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.quantity.Dense;
import dev.pellucid.engine.resolve.Line;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one ingredient of one line brings, premixes opened. Masses are kg per 100 kg of recipe;
 * amounts are such a mass times a content, so that an amount over the finished mass is per kg of
 * feed.
 */
public final class Row {
  private final ExplodedLine leaf;
  private final Retained kept;
  private final Retained asIfGapsKeptAll;
  private final FeedYield feedYield;

  /**
   * @param asIfGapsKeptAll what would be kept if every step of which the folder tells nothing kept
   *     all
   * @param feedYield how much finished feed there is for all dry matter
   */
  Row(ExplodedLine leaf, Retained kept, Retained asIfGapsKeptAll, FeedYield feedYield) {
    this.leaf = leaf;
    this.kept = kept;
    this.asIfGapsKeptAll = asIfGapsKeptAll;
    this.feedYield = feedYield;
  }

  ExplodedLine leaf() {
    return leaf;
  }

  /** The same of another weighing of the recipe. */
  Row weighed(ExplodedLine other, FeedYield ofOther) {
    return new Row(other, kept, asIfGapsKeptAll, ofOther);
  }

  /** The same at another price. */
  Row priced(Price price) {
    return new Row(leaf.priced(price), kept, asIfGapsKeptAll, feedYield);
  }

  Row asIfGapsKeptAll() {
    return new Row(leaf, asIfGapsKeptAll, asIfGapsKeptAll, feedYield);
  }

  /**
   * What it would be of one kg of its line, at each end. Masses, amounts and money grow in step
   * with the kg of the line; of another weighing they are so many times these. The mass of the feed
   * does not grow so, for which see {@link ComputedFeed#weighed(Weighing)}.
   */
  public Row ofOneKg() {
    return new Row(leaf.weighed(1, 1), kept, asIfGapsKeptAll, feedYield);
  }

  /** The line of the recipe to blame. */
  public Line line() {
    return leaf.line();
  }

  /** From the line down: {@code VM-CAT}, {@code zinc-sulphate}. */
  public List<String> path() {
    return leaf.path();
  }

  public Ingredient ingredient() {
    return leaf.material().ingredient();
  }

  public Composition composition() {
    return leaf.composition();
  }

  public Optional<Price> price() {
    return leaf.material().price();
  }

  /** What all of it costs, handling overage included; nothing where it has no price. */
  public double money() {
    Optional<Price> price = price();
    return price.isPresent() ? price.get().perKg() * kgRichest() : 0;
  }

  /** Whether there is any of it: of a line at zero there is none. */
  boolean isOfSome() {
    return leaf.isOfSome();
  }

  /** The mass in the feed, handling overage lost. */
  public double kg() {
    return leaf.kg();
  }

  /** The mass with all handling overage. */
  public double kgRichest() {
    return leaf.richest();
  }

  /** The dry matter of it, on target. */
  public double dryMatter() {
    return FeedYield.dryMatter(leaf, feedYield.moisture());
  }

  /**
   * What of the finished feed comes from it, on target: its dry matter, with as much of the water
   * as the feed has for each kg of dry matter.
   */
  public double finished() {
    return feedYield.finished(dryMatter());
  }

  /** The mass at an end. */
  public double kg(Scenario end) {
    return end == Scenario.RICHEST ? leaf.richest() : leaf.kg();
  }

  /** What one kg of it holds of each nutrient at an end. */
  Dense kept(Scenario end) {
    return kept.at(end);
  }

  /** The amount of one nutrient at an end. */
  public double amount(Scenario end, int nutrient) {
    return amount(end, end, nutrient);
  }

  /** What one kg of it holds of one nutrient at an end. */
  public double perKg(Scenario end, int nutrient) {
    return kept.at(end).at(nutrient);
  }

  /** The amount that the content at one end makes in the mass at another. */
  double amount(Scenario content, Scenario mass, int nutrient) {
    return kept.at(content).at(nutrient) * kg(mass);
  }

  /**
   * One standard deviation of the amount of some nutrients together, on target and fresh: the
   * contents that they follow from move together, each by its net part in the sum.
   */
  public double deviation(int... nutrients) {
    Map<Integer, Double> net = new TreeMap<>();
    for (int nutrient : nutrients) {
      for (Composition.Derived.Term term : composition().net().get(nutrient)) {
        net.merge(term.nutrient(), term.factor(), Double::sum);
      }
    }
    double sum = 0;
    for (Map.Entry<Integer, Double> one : net.entrySet()) {
      sum += Math.abs(one.getValue()) * told(Scenario.EXPECTED, Scenario.EXPECTED, one.getKey());
    }
    return sum;
  }

  /**
   * One standard deviation that a content which is told makes in the mass: what decays varies less.
   */
  double told(Scenario content, Scenario mass, int nutrient) {
    return toldPerKg(content, nutrient) * kg(mass);
  }

  /** The same of one kg of it. */
  double toldPerKg(Scenario content, int nutrient) {
    double full = kept.spread().at(nutrient);
    double fresh = kept.expected().at(nutrient);
    return content == Scenario.POOREST && fresh > 0
        ? full * kept.poorest().at(nutrient) / fresh
        : full;
  }
}
