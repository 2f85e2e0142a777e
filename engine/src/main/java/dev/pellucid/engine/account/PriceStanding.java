package dev.pellucid.engine.account;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.engine.resolve.Material;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How old the prices of some ingredients are on a day, and how far they can be trusted.
 *
 * @param prices of each ingredient that has one, once, in the order in which it first comes
 * @param unpriced ingredients without a price on the day, in the same order
 */
public record PriceStanding(List<Priced> prices, List<String> unpriced) {
  public PriceStanding {
    prices = List.copyOf(prices);
    unpriced = List.copyOf(unpriced);
  }

  /**
   * The price of an ingredient.
   *
   * @param lines of the recipe that it comes in, its own and premixes and rework; none where it is
   *     not of a recipe
   * @param from the day from which it holds
   * @param days its age
   * @param source its name in {@code sources.yaml}
   */
  public record Priced(
      String ingredient,
      List<String> lines,
      LocalDate from,
      long days,
      String source,
      Reliability standing) {
    public Priced {
      lines = List.copyOf(lines);
    }

    /** Whether somebody made it up. */
    public boolean isInvented() {
      return standing == Reliability.INVENTED;
    }
  }

  /**
   * Of all that goes into a feed, premixes opened.
   *
   * @param day by which the feed was computed
   */
  public static PriceStanding of(ComputedFeed feed, LocalDate day) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    Map<String, Price> prices = new LinkedHashMap<>();
    for (Row row : feed.rows()) {
      String line = row.line().material().name();
      List<String> in = lines.computeIfAbsent(row.ingredient().name(), any -> new ArrayList<>(1));
      if (!in.contains(line)) {
        in.add(line);
      }
      if (row.price().isPresent()) {
        prices.putIfAbsent(row.ingredient().name(), row.price().get());
      }
    }
    return of(lines, prices, day);
  }

  /** Of ingredients that are in no feed yet, each with its price on the day. */
  public static PriceStanding of(List<Material.Single> ingredients, LocalDate day) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    Map<String, Price> prices = new LinkedHashMap<>();
    for (Material.Single one : ingredients) {
      lines.put(one.name(), List.of());
      if (one.price().isPresent()) {
        prices.put(one.name(), one.price().get());
      }
    }
    return of(lines, prices, day);
  }

  private static PriceStanding of(
      Map<String, List<String>> lines, Map<String, Price> prices, LocalDate day) {
    List<Priced> priced = new ArrayList<>(prices.size());
    List<String> unpriced = new ArrayList<>();
    for (Map.Entry<String, List<String>> one : lines.entrySet()) {
      Price price = prices.get(one.getKey());
      if (price == null) {
        unpriced.add(one.getKey());
      } else {
        priced.add(
            new Priced(
                one.getKey(),
                one.getValue(),
                price.from(),
                ChronoUnit.DAYS.between(price.from(), day),
                price.source().id(),
                price.source().reliability()));
      }
    }
    return new PriceStanding(priced, unpriced);
  }

  /** The oldest, the first of several; empty where nothing has a price. */
  public Optional<Priced> oldest() {
    Optional<Priced> oldest = Optional.empty();
    for (Priced one : prices) {
      if (oldest.isEmpty() || one.days() > oldest.get().days()) {
        oldest = Optional.of(one);
      }
    }
    return oldest;
  }

  /** Those that are more than so many days old. */
  public List<Priced> olderThan(int days) {
    List<Priced> old = new ArrayList<>();
    for (Priced one : prices) {
      if (one.days() > days) {
        old.add(one);
      }
    }
    return old;
  }

  /** Those that somebody made up. */
  public List<Priced> invented() {
    List<Priced> invented = new ArrayList<>();
    for (Priced one : prices) {
      if (one.isInvented()) {
        invented.add(one);
      }
    }
    return invented;
  }
}
