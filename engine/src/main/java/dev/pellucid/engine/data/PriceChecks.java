package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Sisters.Span4;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Meant;
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

  private final SortedMap<String, Ingredient> ingredients;
  private final Remarks remarks;
  // By the day and the group.
  private final Map<String, Span4> spans = new HashMap<>();

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

  private void take(Price price) {
    Ingredient of = ingredients.get(price.ingredient());
    if (of != null && price.perKg() > 0) {
      for (String group : of.groups()) {
        spans.computeIfAbsent(ofGroup(price, group), any -> new Span4()).add(price.perKg());
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
    for (String group : of.groups().stream().sorted().toList()) {
      Span4 span = spans.get(ofGroup(price, group));
      if (span != null && span.others() >= Sisters.ENOUGH) {
        look(price, span, group);
        return;
      }
    }
  }

  private void look(Price price, Span4 span, String kind) {
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
