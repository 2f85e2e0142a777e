package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much of an ingredient is bought for a feed, or for many, now and then; premixes are opened,
 * and what is lost in handling counts.
 *
 * @param now kg
 * @param then kg
 */
public record Bought(String ingredient, double now, double then) {
  /** In kg: what moves less is not told. */
  private static final double LEAST = 0.01;

  /** As a part of all of it: so much moves by a little water more or less, and nobody plans it. */
  private static final double SLIGHT = 0.005;

  private static final double TONNE = 1000;

  public double moved() {
    return then - now;
  }

  /** Whether there is anything to tell. */
  public boolean isMoved() {
    return Math.abs(moved()) >= LEAST && Math.abs(moved()) >= SLIGHT * Math.max(now, then);
  }

  Bought times(double times) {
    return new Bought(ingredient, now * times, then * times);
  }

  Bought plus(Bought other) {
    return new Bought(ingredient, now + other.now, then + other.then);
  }

  /** For a tonne in the bags, what moves most first. */
  public static List<Bought> forTonne(ComputedFeed now, ComputedFeed then) {
    Map<String, Double> before = kg(now);
    Map<String, Double> after = kg(then);
    TreeMap<String, Double> names = new TreeMap<>(before);
    names.putAll(after);
    List<Bought> bought = new ArrayList<>();
    for (String name : names.keySet()) {
      bought.add(new Bought(name, before.getOrDefault(name, 0.0), after.getOrDefault(name, 0.0)));
    }
    bought.sort(Comparator.comparingDouble((Bought one) -> -Math.abs(one.moved())));
    return bought;
  }

  private static Map<String, Double> kg(ComputedFeed feed) {
    Map<String, Double> kg = new TreeMap<>();
    for (Row row : feed.rows()) {
      double one = bought(row) / feed.bagged() * TONNE;
      kg.merge(row.ingredient().name(), one, Double::sum);
    }
    return kg;
  }

  /** By its money, which counts what is lost in handling too; by its mass where it has no price. */
  private static double bought(Row row) {
    double price = row.price().isPresent() ? row.price().get().perKg() : 0;
    return price > 0 ? row.money() / price : row.kg();
  }
}
