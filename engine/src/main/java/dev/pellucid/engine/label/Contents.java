package dev.pellucid.engine.label;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Additive;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.label.BagLabel.Fact;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a feed is made of, as its label lists it: premixes opened, each ingredient once with all
 * that comes of it, carriers included, by falling weight as mixed. What is weighed on top to be
 * lost does not count.
 *
 * <p>Where the rules put additives apart, those that bring a nutrient with a legal maximum for this
 * feed are told with what was added of it per kg of finished feed, before anything decays.
 */
final class Contents {
  private final ComputedFeed feed;
  private final boolean apart;
  private final Map<Ingredient, Double> byWeight = new LinkedHashMap<>();

  Contents(ComputedFeed feed, LabelRules rules) {
    this.feed = feed;
    this.apart = rules.additivesApart();
    Map<String, Ingredient> named = new LinkedHashMap<>();
    Map<Ingredient, Double> kg = new LinkedHashMap<>();
    for (Row row : feed.rows()) {
      Ingredient first = named.putIfAbsent(row.ingredient().name(), row.ingredient());
      kg.merge(first == null ? row.ingredient() : first, row.kg(), Double::sum);
    }
    kg.entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .sorted(
            Map.Entry.<Ingredient, Double>comparingByValue()
                .reversed()
                .thenComparing(entry -> entry.getKey().title()))
        .forEach(entry -> byWeight.put(entry.getKey(), entry.getValue()));
  }

  List<String> ingredients() {
    return byWeight.keySet().stream()
        .filter(one -> !apart || one.additive().isEmpty())
        .map(Ingredient::title)
        .toList();
  }

  /**
   * Those with a legal maximum, with the amount, by functional group and then by falling weight.
   */
  List<Fact> additives() {
    return additivesByGroup().stream()
        .filter(one -> limited(one).isPresent())
        .map(one -> fact(one, limited(one).orElseThrow()))
        .toList();
  }

  List<String> otherAdditives() {
    return additivesByGroup().stream()
        .filter(one -> limited(one).isEmpty())
        .map(Contents::named)
        .toList();
  }

  private List<Ingredient> additivesByGroup() {
    List<Ingredient> additives = new ArrayList<>();
    if (apart) {
      byWeight.keySet().stream().filter(one -> one.additive().isPresent()).forEach(additives::add);
      additives.sort(
          Comparator.comparing(one -> one.additive().map(Additive::functionalGroup).orElse("")));
    }
    return additives;
  }

  /** The nutrient that it is there for, where the law has a maximum of it in this feed. */
  private Optional<Nutrient> limited(Ingredient one) {
    return one.additive()
        .flatMap(Additive::nutrient)
        .flatMap(feed.nutrients()::named)
        .filter(this::hasLegalMaximum);
  }

  private boolean hasLegalMaximum(Nutrient nutrient) {
    return feed.recipe().limits().stream()
        .filter(limit -> limit.side() == Bound.Side.MAX)
        .filter(limit -> limit.origin().kind() == Limit.Kind.LAW)
        .anyMatch(limit -> limit.subject().addends().contains(nutrient));
  }

  private Fact fact(Ingredient one, Nutrient nutrient) {
    double added = 0;
    for (Row row : feed.rows()) {
      if (row.ingredient().name().equals(one.name())) {
        added += row.kg() * row.composition().low().at(nutrient.index());
      }
    }
    double perKg = added / feed.balances().expected().finished();
    return new Fact(
        one.additive().orElseThrow().functionalGroup() + ": " + named(one),
        nutrient.title()
            + " "
            + threeDigits(nutrient.unit().fromBase(perKg))
            + " "
            + nutrient.unit().symbol());
  }

  /** As a label needs it: 1519, 35.5, 4.05, 0.081. */
  private static String threeDigits(double value) {
    return Figures.visible(value, value >= 100 ? 0 : value >= 10 ? 1 : value >= 1 ? 2 : 3);
  }

  /** {@code Zinc sulphate monohydrate (3b605)}. */
  private static String named(Ingredient one) {
    return one.title()
        + one.additive().flatMap(Additive::number).map(number -> " (" + number + ")").orElse("");
  }
}
