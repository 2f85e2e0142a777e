package dev.pellucid.engine.account;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.measure.Unit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What there is to tell of a feed, taken down once. Records, comparisons, pages and sheets show it
 * and reckon nothing of it anew.
 *
 * @param lines of the recipe, in order
 * @param bagged kg in the bags of 100 kg of recipe
 * @param moisture the share of water in the finished feed, on target
 * @param costPerKg of what is bagged
 * @param costs what each line brings to it, by name
 * @param unpriced ingredients without a price: what they cost is in no figure
 * @param contents of every nutrient, by name, in order
 * @param inclusions of every ingredient, by name, premixes opened
 * @param limits how it stands with each of them, by what they ask, in order
 */
public record Account(
    List<LineShare> lines,
    double bagged,
    double moisture,
    double costPerKg,
    Map<String, LineCost> costs,
    List<String> unpriced,
    Map<String, Content> contents,
    List<Inclusion> inclusions,
    Map<String, Held> limits) {
  public Account {
    lines = List.copyOf(lines);
    costs = inOrder(costs);
    unpriced = List.copyOf(unpriced);
    contents = inOrder(contents);
    inclusions = List.copyOf(inclusions);
    limits = inOrder(limits);
  }

  /** The account of a feed. */
  public static Account of(ComputedFeed feed, List<LimitStatus> limits) {
    return new Accounting(feed).account(limits);
  }

  private static <T> Map<String, T> inOrder(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /**
   * A line of the recipe.
   *
   * @param share as it is written, exact
   * @param onTop what is weighed on top of it for handling, as a share of the recipe
   * @param kgPerWeighing what is weighed on top at each weighing
   */
  public record LineShare(
      String line, Place place, Share share, Share onTop, double kgPerWeighing) {}

  /**
   * What a line costs.
   *
   * @param perKgBagged money in a kg of feed
   * @param perKg money for a kg of it
   */
  public record LineCost(double perKgBagged, double perKg) {}

  /**
   * What a kg of feed holds of a nutrient as fed, on target and fresh.
   *
   * @param base in the base of the unit's kind
   * @param lossTold whether the folder says how much of it heat and time leave; else the figure is
   *     not to be compared
   */
  public record Content(
      String nutrient, Unit unit, double base, Certainty certainty, boolean lossTold) {
    /** In its unit. */
    public double figure() {
      return unit.fromBase(base);
    }
  }

  /**
   * An ingredient in a feed.
   *
   * @param percent of the recipe as weighed, overage left out
   * @param through premixes and rework that it comes in, beside a line of its own
   * @param money that it costs in a kg in the bags
   */
  public record Inclusion(String ingredient, double percent, List<String> through, double money) {
    public Inclusion {
      through = List.copyOf(through);
    }
  }

  /**
   * How many limits stand in which way; a limit with both a minimum and a maximum is two.
   *
   * @param untold those that cannot be judged
   */
  public record Tally(int kept, int broken, int untold) {}

  /** How the limits stand. */
  public Tally tally() {
    int broken = (int) limits.values().stream().filter(Held::broken).count();
    int untold = (int) limits.values().stream().filter(one -> !one.told()).count();
    return new Tally(limits.size() - broken - untold, broken, untold);
  }

  /** kg in the bags for each kg of recipe. */
  public double baggedPerKg() {
    return bagged / 100;
  }

  /** The shares by the name of the line; of a line that stands there twice both. */
  public Map<String, String> shares() {
    Map<String, String> shares = new LinkedHashMap<>();
    lines.forEach(
        one ->
            shares.merge(
                one.line(), one.share().toString(), (first, second) -> first + " and " + second));
    return shares;
  }

  /** A content that may be compared; empty where the loss of it is not told. */
  public Optional<Content> told(String nutrient) {
    return Optional.ofNullable(contents.get(nutrient)).filter(Content::lossTold);
  }

  /** The same feed, of which nothing is asked. */
  public Account withoutLimits() {
    return new Account(
        lines, bagged, moisture, costPerKg, costs, unpriced, contents, inclusions, Map.of());
  }
}
