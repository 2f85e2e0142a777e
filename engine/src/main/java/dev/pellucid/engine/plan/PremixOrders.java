package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of each premix to make: what one batch of each approved feed takes, overage included,
 * and what the premixes that hold it take in turn, rounded up to whole bags, and up to what a mixer
 * of the plant mixes evenly where that is not far more. A premix file tells no size of batch, so
 * this is our choice; it leaves no part bag and stays within a few rounds of feeds.
 */
public final class PremixOrders {
  private static final BigDecimal UNTOLD_BAG = BigDecimal.ONE;
  private static final BigDecimal UNASKED_KG = BigDecimal.TEN;

  /** How many times as much as is asked for is made for the sake of the mixer (our own choice). */
  private static final int MOST_FOR_THE_MIXER = 5;

  private final Map<String, ResolvedPremix> premixes;
  private final FeedTables tables;
  private final Map<String, List<Premixing.Need>> byFeeds = new HashMap<>();
  private final Map<String, Order> orders = new HashMap<>();

  /**
   * What is to be made of a premix, and for what.
   *
   * @param forTheMixer whether it is more than is asked for, so that a mixer mixes it evenly
   */
  record Order(Mass batch, Mass bag, boolean forTheMixer, List<Premixing.Need> needs) {}

  /**
   * @param premixes by code; none holds itself
   * @param feeds what the feeds weigh out, by their codes, in order
   */
  public PremixOrders(
      Map<String, ResolvedPremix> premixes,
      Map<String, List<Premixing.Need>> feeds,
      FeedTables tables) {
    this.premixes = premixes;
    this.tables = tables;
    feeds.forEach(
        (feed, needs) ->
            needs.forEach(
                need ->
                    byFeeds
                        .computeIfAbsent(need.code(), none -> new ArrayList<>())
                        .add(new Premixing.Need(feed, need.kg()))));
  }

  /** What a feed takes of each premix. */
  public static List<Premixing.Need> of(BatchPlan plan) {
    return plan.weighing().stream()
        .filter(line -> plan.premixCodes().contains(line.name()))
        .map(line -> new Premixing.Need(line.name(), line.total()))
        .toList();
  }

  Order order(ResolvedPremix premix) {
    Order known = orders.get(premix.code());
    if (known == null) {
      known = work(premix);
      orders.put(premix.code(), known);
    }
    return known;
  }

  private Order work(ResolvedPremix premix) {
    List<Premixing.Need> needs = new ArrayList<>(byFeeds.getOrDefault(premix.code(), List.of()));
    premixes.values().stream()
        .filter(other -> holds(other, premix))
        .sorted((a, b) -> a.code().compareTo(b.code()))
        .filter(other -> !order(other).needs().isEmpty())
        .forEach(other -> needs.add(new Premixing.Need(other.code(), part(other, premix))));
    BigDecimal bag = bag(premix);
    BigDecimal least =
        needs.isEmpty()
            ? UNASKED_KG
            : needs.stream().map(need -> need.kg().kg()).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal bags = least.divide(bag, 0, RoundingMode.CEILING);
    BigDecimal asked = bags.multiply(bag);
    BigDecimal made = needs.isEmpty() ? asked : mixedEvenly(premix, asked, bag);
    boolean more = made.compareTo(asked) > 0;
    return new Order(new Mass(made), new Mass(bag), more, needs);
  }

  /** kg in whole bags that a mixer mixes evenly; what is asked where that is far less. */
  private BigDecimal mixedEvenly(ResolvedPremix premix, BigDecimal asked, BigDecimal bag) {
    Optional<ComputedFeed> feed = PremixPlanner.feed(premix, tables);
    if (feed.isEmpty()) {
      return asked;
    }
    BigDecimal most = asked.multiply(BigDecimal.valueOf(MOST_FOR_THE_MIXER));
    for (BigDecimal kg = asked; kg.compareTo(most) <= 0; kg = kg.add(bag)) {
      Optional<Loads> loads =
          WeighingPlanner.plan(feed.get(), kg.doubleValue(), tables).flatMap(WeighingPlan::loads);
      if (loads.isEmpty()) {
        return asked;
      }
      if (loads.get().fills()) {
        return kg;
      }
    }
    return asked;
  }

  /** How many kg of a premix are made at once; empty where no approved feed takes it. */
  public OptionalDouble made(ResolvedPremix premix) {
    Order order = order(premix);
    return order.needs().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(order.batch().asDouble());
  }

  private static boolean holds(ResolvedPremix other, ResolvedPremix premix) {
    return other.parts().stream().anyMatch(part -> isOf(part, premix));
  }

  private static boolean isOf(ResolvedPremix.Part part, ResolvedPremix premix) {
    return part.material()
        .premixed()
        .filter(other -> other.code().equals(premix.code()))
        .isPresent();
  }

  private Mass part(ResolvedPremix other, ResolvedPremix premix) {
    double share =
        other.parts().stream()
            .filter(part -> isOf(part, premix))
            .mapToDouble(ResolvedPremix.Part::weighed)
            .sum();
    double kg = order(other).batch().asDouble() * share;
    return Mass.of(kg, Grid.of(kg, kg).small());
  }

  private static BigDecimal bag(ResolvedPremix premix) {
    return premix
        .process()
        .setting(Step.PACK, Property.BAG)
        .map(Setting::aim)
        .filter(bag -> bag > 0)
        .map(BigDecimal::valueOf)
        .map(BigDecimal::stripTrailingZeros)
        .orElse(UNTOLD_BAG);
  }
}
