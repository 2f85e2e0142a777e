package dev.pellucid.engine.plan;

import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of each premix to make: what one batch of each approved feed takes, overage included,
 * and what the premixes that hold it take in turn, rounded up to whole bags. A premix file tells no
 * size of batch, so this is our choice; it leaves no part bag and stays within one round of feeds.
 */
public final class PremixOrders {
  private static final BigDecimal UNTOLD_BAG = BigDecimal.ONE;
  private static final BigDecimal UNASKED_KG = BigDecimal.TEN;

  private final Map<String, ResolvedPremix> premixes;
  private final Map<String, List<Premixing.Need>> byFeeds = new HashMap<>();
  private final Map<String, Order> orders = new HashMap<>();

  /** What is to be made of a premix, and for what. */
  record Order(Mass batch, Mass bag, List<Premixing.Need> needs) {}

  /**
   * @param premixes by code; none holds itself
   * @param feeds what the feeds weigh out, by their codes, in order
   */
  public PremixOrders(
      Map<String, ResolvedPremix> premixes, Map<String, List<Premixing.Need>> feeds) {
    this.premixes = premixes;
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
    return new Order(new Mass(bags.multiply(bag)), new Mass(bag), needs);
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
            .mapToDouble(part -> part.share().part() + part.onTop().part())
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
