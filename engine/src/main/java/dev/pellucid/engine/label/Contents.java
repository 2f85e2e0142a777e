package dev.pellucid.engine.label;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Additive;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Modified;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Saying;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.label.BagLabel.Group;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a feed is made of, as its label lists it: premixes opened, each ingredient once with all
 * that comes of it, carriers included, by falling weight as mixed. What is weighed on top to be
 * lost does not count.
 *
 * <p>Where the rules put additives apart, those that must be told show what was added of them per
 * kg of finished feed, before anything decays. An additive must be told where the rules say so, and
 * where the law has a maximum of what it brings in this feed.
 */
final class Contents {
  private final ComputedFeed feed;
  private final LabelRules rules;
  private final Map<Ingredient, Double> byWeight = new LinkedHashMap<>();

  Contents(ComputedFeed feed, LabelRules rules) {
    this.feed = feed;
    this.rules = rules;
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

  /** Two that the bag calls alike are one. */
  List<String> ingredients() {
    Map<String, Double> kg = new LinkedHashMap<>();
    byWeight.forEach(
        (one, weight) -> {
          if (!rules.additivesApart() || one.additive().isEmpty()) {
            kg.merge(words(one), weight, Double::sum);
          }
        });
    return kg.entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Ingredients first, then each group of additives; those that the bag calls alike together. */
  List<List<List<Ingredient>>> byWeight() {
    Map<String, List<Ingredient>> named = new LinkedHashMap<>();
    Map<String, List<List<Ingredient>>> additives = new TreeMap<>();
    for (Ingredient one : byWeight.keySet()) {
      if (!rules.additivesApart() || one.additive().isEmpty()) {
        named.computeIfAbsent(words(one), name -> new ArrayList<>()).add(one);
      } else {
        Additive additive = one.additive().get();
        String group =
            showsAmount(additive) + " " + mustBeTold(additive) + additive.functionalGroup();
        additives.computeIfAbsent(group, name -> new ArrayList<>()).add(List.of(one));
      }
    }
    List<List<List<Ingredient>>> lists = new ArrayList<>();
    List<List<Ingredient>> first = new ArrayList<>();
    for (String name : ingredients()) {
      first.add(named.getOrDefault(name, List.of()));
    }
    lists.add(first);
    lists.addAll(additives.values());
    return lists;
  }

  /** {@code Soya (bean) meal (produced from genetically modified soya)}. */
  private String words(Ingredient one) {
    boolean modified = one.bag().modified() == Modified.YES;
    return one.onBag()
        + (modified ? rules.modified(one).map(words -> " (" + words.words() + ")").orElse("") : "");
  }

  /** What the law asks to be said for what is in, each sentence once. */
  List<String> sayings() {
    List<String> sayings = new ArrayList<>();
    for (Saying saying : rules.sayings()) {
      boolean isIn =
          byWeight.keySet().stream().anyMatch(one -> saying.isFor(one, feed.recipe().species()));
      if (isIn && !sayings.contains(saying.words())) {
        sayings.add(saying.words());
      }
    }
    return sayings;
  }

  /** Those that must be told and those that show their amount all the same. */
  List<Group> additives() {
    return groups(true);
  }

  /** The others, by their names alone. */
  List<Group> otherAdditives() {
    return groups(false);
  }

  /**
   * By functional group and then by falling weight; in each group those first that must be told.
   */
  private List<Group> groups(boolean amounts) {
    Map<String, List<Ingredient>> byGroup = new TreeMap<>();
    for (Ingredient one : byWeight.keySet()) {
      Optional<Additive> additive =
          rules.additivesApart() ? one.additive() : Optional.<Additive>empty();
      if (additive.isPresent() && showsAmount(additive.get()) == amounts) {
        byGroup
            .computeIfAbsent(additive.get().functionalGroup(), group -> new ArrayList<>())
            .add(one);
      }
    }
    List<Group> groups = new ArrayList<>();
    byGroup.forEach(
        (name, additives) -> {
          additives.sort(Comparator.comparing(one -> !mustBeTold(one.additive().orElseThrow())));
          groups.add(
              new Group(
                  name,
                  additives.stream()
                      .map(one -> named(one) + (amounts ? ": " + amount(one) : ""))
                      .toList()));
        });
    return groups;
  }

  private boolean showsAmount(Additive additive) {
    return mustBeTold(additive) || rules.otherAmounts() && nutrient(additive).isPresent();
  }

  private boolean mustBeTold(Additive additive) {
    return rules.declares(additive).isPresent()
        || nutrient(additive).filter(this::hasLegalMaximum).isPresent();
  }

  /** The nutrient that it is there for. */
  private Optional<Nutrient> nutrient(Additive additive) {
    return additive.nutrient().flatMap(feed.nutrients()::named);
  }

  private boolean hasLegalMaximum(Nutrient nutrient) {
    return feed.recipe().limits().stream()
        .filter(limit -> limit.side() == Bound.Side.MAX)
        .filter(limit -> limit.origin().kind() == Limit.Kind.LAW)
        .anyMatch(limit -> limit.subject().addends().contains(nutrient));
  }

  /** {@code zinc 35.4 mg/kg}; of an additive that brings no nutrient, its own weight. */
  private String amount(Ingredient one) {
    Optional<Nutrient> nutrient = nutrient(one.additive().orElseThrow());
    double added = 0;
    for (Row row : feed.rows()) {
      if (row.ingredient().name().equals(one.name())) {
        added +=
            row.kg()
                * (nutrient.isPresent() ? row.composition().low().at(nutrient.get().index()) : 1);
      }
    }
    double perKg = added / feed.balances().expected().finished();
    Unit unit = nutrient.isPresent() ? ofAdditive(nutrient.get().unit()) : Unit.MG_PER_KG;
    String figure = threeDigits(unit.fromBase(perKg)) + " " + unit.symbol();
    return nutrient.isEmpty() || saysIt(one, nutrient.get())
        ? figure
        : inSentence(nutrient.get().title()) + " " + figure;
  }

  /** Whether the name of an additive is that of the nutrient: {@code Riboflavin, B2}. */
  private static boolean saysIt(Ingredient one, Nutrient nutrient) {
    String title = nutrient.title().toLowerCase(Locale.ROOT);
    String name = one.onBag().toLowerCase(Locale.ROOT);
    return title.equals(name) || title.startsWith(name + ",");
  }

  /** A part per hundred is no amount per kg. */
  private static Unit ofAdditive(Unit unit) {
    return unit == Unit.PERCENT ? Unit.G_PER_KG : unit;
  }

  /** {@code vitamin D3} for {@code Vitamin D3}. */
  private static String inSentence(String title) {
    return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
  }

  /** As a label needs it: 1519, 35.5, 4.05, 0.081. */
  private static String threeDigits(double value) {
    return Figures.visible(value, value >= 100 ? 0 : value >= 10 ? 1 : value >= 1 ? 2 : 3);
  }

  /** {@code Zinc sulphate, monohydrate (3b605)}. */
  private static String named(Ingredient one) {
    return one.onBag()
        + one.additive().flatMap(Additive::number).map(number -> " (" + number + ")").orElse("");
  }
}
