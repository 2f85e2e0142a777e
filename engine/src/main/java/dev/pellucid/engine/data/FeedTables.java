package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * All the data of a folder, immutable and shared by every recipe.
 *
 * @param groups groups of ingredients and where each was declared
 * @param plants by the names of their files
 * @param plant the one that holds where a recipe or premix names none
 * @param label the label rules that the settings name
 * @param lots by number
 * @param bins by name, those that lots lie in or that were emptied
 * @param pricesWhole false when a part of the prices could not be read: then what has none here may
 *     have one
 * @param ordering how ingredients are ordered, each in the order of the days from which it holds
 * @param batches records by number
 * @param plans by the names of their files
 */
public record FeedTables(
    Settings settings,
    SortedMap<String, Source> sources,
    Nutrients nutrients,
    SortedMap<String, Group> groups,
    SortedMap<String, Ingredient> ingredients,
    SortedMap<String, Species> species,
    SortedMap<String, Plant> plants,
    Optional<Plant> plant,
    Optional<LabelRules> label,
    Practice practice,
    SortedMap<String, List<Price>> prices,
    boolean pricesWhole,
    SortedMap<String, List<Ordering>> ordering,
    SortedMap<String, Lot> lots,
    SortedMap<String, Bin> bins,
    SortedMap<String, BatchRecord> batches,
    SortedMap<String, FeedPlan> plans) {

  /** A group of ingredients. */
  public record Group(String name, String title, Span declared) {}

  /** The newest price on a day. */
  public Optional<Price> price(String ingredient, LocalDate day) {
    Price newest = null;
    for (Price price : prices.getOrDefault(ingredient, List.of())) {
      boolean counts = !price.from().isAfter(day);
      if (counts && (newest == null || price.from().isAfter(newest.from()))) {
        newest = price;
      }
    }
    return Optional.ofNullable(newest);
  }

  /** How an ingredient is ordered by the newest that is told on a day. */
  public Optional<Ordering> ordering(String ingredient, LocalDate day) {
    Ordering newest = null;
    for (Ordering one : ordering.getOrDefault(ingredient, List.of())) {
      newest = one.from().isAfter(day) ? newest : one;
    }
    return Optional.ofNullable(newest);
  }

  /** Whether any species, or group of species, has this name. */
  public boolean knowsSpeciesOrGroup(String name) {
    return species.values().stream().anyMatch(one -> one.is(name));
  }
}
