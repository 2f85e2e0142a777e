package dev.pellucid.engine.data;

import dev.pellucid.engine.data.PricesReader.Written;
import dev.pellucid.engine.data.Sisters.Extremes;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Meant;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;

/**
 * Each price against the one before it, and a first one against those of the same day of the other
 * ingredients of its groups, where these are alike. More than five times or less than a fifth is
 * most often a slipped point, or a price of a ton beside {@code /kg}.
 *
 * <p>Five times: common practice, no source.
 */
final class PriceChecks {
  static final Code CODE = new Code("data-price-far-off");

  static final Code LEFT_OUT = new Code("data-price-left-out");

  /** Where more are left out, the newest list renews only some prices. */
  private static final double MOST_LEFT_OUT = 0.1;

  private final SortedMap<String, Ingredient> ingredients;
  private final Remarks remarks;
  // By the day and the group.
  private final Map<String, Extremes> spans = new HashMap<>();

  PriceChecks(SortedMap<String, Ingredient> ingredients, Remarks remarks) {
    this.ingredients = ingredients;
    this.remarks = remarks;
  }

  void look(SortedMap<String, List<Price>> byIngredient) {
    for (List<Price> prices : byIngredient.values()) {
      for (Price price : prices) {
        take(price);
      }
    }
    for (List<Price> prices : byIngredient.values()) {
      List<Price> inTime = new ArrayList<>(prices);
      inTime.sort(Comparator.comparing(Price::from));
      Price before = null;
      for (Price price : inTime) {
        if (price.perKg() > 0) {
          look(price, before);
          before = price;
        }
      }
    }
  }

  /**
   * The newest list against the one before it: where it renews most prices, one that it leaves out
   * was most likely lost, and the old price counts on.
   *
   * @param lists the prices of each file
   */
  void lists(List<List<Written>> lists) {
    List<Written> newest = List.of();
    List<Written> before = List.of();
    for (List<Written> list : lists) {
      if (isLater(list, newest)) {
        before = newest;
        newest = list;
      } else if (isLater(list, before)) {
        before = list;
      }
    }
    Map<String, Span> renewed = new HashMap<>();
    for (Written one : newest) {
      renewed.put(one.price().ingredient(), one.ingredient().span());
    }
    List<Price> left = new ArrayList<>();
    for (Written one : before) {
      if (!renewed.containsKey(one.price().ingredient())) {
        left.add(one.price());
      }
    }
    if (!left.isEmpty() && left.size() <= MOST_LEFT_OUT * before.size()) {
      leftOut(before, renewed, newest.get(0).price());
    }
  }

  private static boolean isLater(List<Written> list, List<Written> other) {
    return !list.isEmpty()
        && (other.isEmpty() || list.get(0).price().from().isAfter(other.get(0).price().from()));
  }

  private void leftOut(List<Written> before, Map<String, Span> renewed, Price newest) {
    Span place = newest.place();
    for (Written one : before) {
      Price price = one.price();
      Span here = renewed.get(price.ingredient());
      place = here == null ? place : here;
      if (here == null && ingredients.containsKey(price.ingredient())) {
        remarks.add(
            Finding.warning(
                    LEFT_OUT,
                    place,
                    "the prices from "
                        + newest.from()
                        + " leave out "
                        + price.ingredient()
                        + ", so that "
                        + price.asWritten()
                        + " from "
                        + price.from()
                        + " counts on")
                .seeing("its last price", price.place())
                .helping("add it to the newest list, with the old price if that still holds"));
      }
    }
  }

  private void take(Price price) {
    Ingredient of = ingredients.get(price.ingredient());
    if (of != null && price.perKg() > 0) {
      for (String group : of.groups()) {
        spans.computeIfAbsent(ofGroup(price, group), any -> new Extremes()).add(price.perKg());
      }
    }
  }

  private static String ofGroup(Price price, String group) {
    return price.from() + " " + group;
  }

  private void look(Price price, @Nullable Price before) {
    if (before != null) {
      double then = before.perKg();
      if (isFar(price.perKg(), then, then)) {
        remarks.add(
            finding(
                    price,
                    "the price before was " + before.asWritten(),
                    perKg -> !isFar(perKg, then, then))
                .seeing("from " + before.from(), before.place()));
      }
      return;
    }
    Ingredient of = ingredients.get(price.ingredient());
    if (of == null) {
      return;
    }
    List<String> groups = new ArrayList<>(of.groups());
    groups.sort(null);
    for (String group : groups) {
      Extremes span = spans.get(ofGroup(price, group));
      if (span != null && span.others() >= Sisters.ENOUGH) {
        look(price, span, group);
        return;
      }
    }
  }

  private void look(Price price, Extremes span, String kind) {
    double least = span.leastBeside(price.perKg());
    double most = span.mostBeside(price.perKg());
    if (Sisters.areAlike(least, most) && isFar(price.perKg(), least, most)) {
      String others =
          "the "
              + span.others()
              + " others of "
              + kind
              + " "
              + Figures.plain(least)
              + " to "
              + Figures.plain(most)
              + " per kg";
      remarks.add(finding(price, others, perKg -> perKg >= least / 2 && perKg <= most * 2));
    }
  }

  private static boolean isFar(double perKg, double least, double most) {
    return Closeness.isAbove(perKg, Sisters.FAR * most)
        || Closeness.isBelow(perKg, least / Sisters.FAR);
  }

  private static Finding finding(Price price, String others, DoublePredicate fits) {
    Optional<String> meant = meant(price, fits);
    Finding finding =
        Finding.warning(
            CODE,
            price.place(),
            price.ingredient() + " costs " + KeyFindings.shown(price.asWritten()) + ", " + others);
    return (meant.isPresent() ? finding.helping(Meant.question(meant.get())) : finding)
        .helping("look for a slipped decimal point, or for a price of a ton; else leave it");
  }

  /** The same digits by the ton or by the kilogram, or with the point elsewhere. */
  private static Optional<String> meant(Price price, DoublePredicate fits) {
    Optional<Amount> amount = Amount.of(price.asWritten());
    String unit = amount.isPresent() ? amount.get().unit() : null;
    if (amount.isEmpty() || unit == null) {
      return Optional.empty();
    }
    boolean ton = unit.endsWith("/t");
    String number = amount.get().number();
    if (fits.test(price.perKg() * (ton ? 1000 : 0.001))) {
      String other = ton ? unit.replace("/t", "/kg") : unit.replace("/kg", "/t");
      return Optional.of(number + " " + other);
    }
    for (int shift : new int[] {-1, 1, -2, 2}) {
      if (fits.test(price.perKg() * Math.pow(10, shift))) {
        BigDecimal moved = new BigDecimal(number).scaleByPowerOfTen(shift).stripTrailingZeros();
        return Optional.of(moved.toPlainString() + " " + unit);
      }
    }
    return Optional.empty();
  }
}
