package dev.pellucid.engine.compare;

import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.measure.Unit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * All that is told of a feed, as plain values: the two states of a folder are not open at once.
 *
 * @param shares percent of the recipe by the name of the line, in order
 * @param nutrients on target and fresh, as fed, by name
 * @param costPerKg of what is bagged
 * @param costs what each line brings to it, by name
 * @param unpriced ingredients without a price: what they cost is in no figure
 * @param bagged kg in the bags of 100 kg of recipe
 * @param limits by what they bound, in order
 * @param waivers what is waived and until when
 * @param waived what limits with a waiver are about
 * @param claims what the label says of nutrients, by name
 * @param printed what else stands on the label, by heading
 * @param weighings what the scales must show
 */
public record FeedFigures(
    Map<String, String> shares,
    Map<String, Amount> nutrients,
    double costPerKg,
    Map<String, LineCost> costs,
    List<String> unpriced,
    double bagged,
    Map<String, Held> limits,
    Set<String> waivers,
    Set<String> waived,
    Map<String, Claimed> claims,
    Map<String, String> printed,
    Weighings weighings) {
  public FeedFigures {
    shares = inOrder(shares);
    nutrients = inOrder(nutrients);
    costs = inOrder(costs);
    unpriced = List.copyOf(unpriced);
    limits = inOrder(limits);
    waivers = Collections.unmodifiableSet(new TreeSet<>(waivers));
    waived = Set.copyOf(waived);
    claims = inOrder(claims);
    printed = inOrder(printed);
  }

  /** The same feed, of which nothing is asked and nothing told. */
  FeedFigures withoutLimits() {
    return new FeedFigures(
        shares, nutrients, costPerKg, costs, unpriced, bagged, Map.of(), Set.of(), Set.of(),
        Map.of(), Map.of(), weighings);
  }

  /** How the limits stand. */
  Kept kept() {
    int broken = (int) limits.values().stream().filter(Held::broken).count();
    int untold = (int) limits.values().stream().filter(one -> !one.told()).count();
    return new Kept(limits.size() - broken - untold, broken, untold);
  }

  /**
   * How many limits stand in which way; a limit with both a minimum and a maximum is two.
   *
   * @param untold those that cannot be judged
   */
  public record Kept(int kept, int broken, int untold) {}

  private static <T> Map<String, T> inOrder(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** Whether a profile of limits holds the recipe, asked for or by law. */
  boolean isHeldBy(String profile) {
    return limits.values().stream().anyMatch(limit -> limit.profile().equals(profile));
  }

  /** A figure in the base of its unit's kind. */
  public record Amount(double base, Unit unit) {}

  /**
   * What a line costs.
   *
   * @param perKgBagged money in a kg of feed
   * @param perKg money for a kg of it
   */
  public record LineCost(double perKgBagged, double perKg) {}

  /**
   * One side of one limit.
   *
   * @param profile that asks for it; empty for the recipe itself
   * @param written its bound with basis and confidence, whatever is waived
   * @param bound the one in force, of a waiver where there is one
   * @param judged in the unit of the bound; what is told alone, where only a bound of the rest
   *     breaks it
   * @param certainty of that figure
   * @param unit of the bound; empty for a plain quotient
   * @param room what is left to the bound as a part of it; below zero where it is broken
   * @param told whether it could be judged at all
   */
  public record Held(
      String profile,
      String subject,
      String written,
      String bound,
      double judged,
      Certainty certainty,
      String unit,
      double room,
      boolean keeps,
      boolean told) {

    /** Whether another bound stands in its place. */
    public boolean waived() {
      return !bound.equals(written);
    }

    /** Whether it could be judged and is not kept. */
    public boolean broken() {
      return told && !keeps;
    }
  }

  /** A figure of the label and what the feed makes of it, in a sentence. */
  public record Claimed(String sentence, LabelVerdict.Outcome outcome) {}

  /**
   * What the scales must show.
   *
   * @param kg of the batch, without overage and water
   * @param loads of the mix
   * @param rounds of the coater
   * @param each kg of each line in one load, or one round of the coater, by its name
   */
  public record Weighings(double kg, int loads, int rounds, Map<String, Double> each) {
    /** Where the folder tells no plant or no scales. */
    static final Weighings NONE = new Weighings(0, 0, 0, Map.of());

    public Weighings {
      each = inOrder(each);
    }
  }
}
