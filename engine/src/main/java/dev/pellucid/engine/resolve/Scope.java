package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Everything that a recipe may name.
 *
 * @param profiles by name, those of law included
 * @param premixes by code, those that could be resolved
 * @param brokenPremixes codes whose own file already says why they cannot be used, each with a
 *     thing that is the same object only while the reasons are the same
 * @param recipes codes of recipes, which a line may name as rework only, and where each is declared
 * @param reworks what finished feeds are made of
 * @param days by which prices and waivers count
 */
public record Scope(
    FeedTables tables,
    Map<String, Profile> profiles,
    Map<String, ResolvedPremix> premixes,
    SortedMap<String, Object> brokenPremixes,
    Map<String, Span> recipes,
    Reworks reworks,
    Days days) {
  private static final Material.Reworked NOTHING =
      new Material.Reworked(ResolvedPremix.nothing(), Optional.empty());

  /** The same for a recipe whose feed is to be worked into others: its own rework is left out. */
  Scope ofSource() {
    return new Scope(
        tables, profiles, premixes, brokenPremixes, recipes, code -> Optional.of(NOTHING), days);
  }

  /** What a reference finds here. */
  Optional<?> find(Ref ref) {
    String name = ref.name();
    return switch (ref.kind()) {
      case FRAME -> Optional.of(tables.nutrients());
      case PRACTICE -> Optional.of(tables.practice());
      case PLANT -> tables.plant();
      case LABEL -> tables.label();
      case LAW -> Optional.of(law());
      case INGREDIENT -> ingredient(name);
      case FORMER_NAME -> formerly(name);
      case PRICE -> price(name);
      case PRICES -> Optional.of(List.of(tables.pricesWhole(), tables.prices().isEmpty()));
      case PREMIX ->
          brokenPremixes.containsKey(name) ? Optional.of(brokenPremixes.get(name)) : premix(name);
      case PROFILE -> profile(name);
      case REWORK -> reworks.state(name);
      case MATERIALS -> Optional.of(materials());
      case PROFILES -> Optional.of(profileNames());
      case RECIPES -> Optional.of(recipes.keySet());
      case RECORDS -> Optional.of(records(name));
      case STORE -> Optional.of(List.of(tables.lots(), tables.batches(), tables.ingredients()));
    };
  }

  Optional<Ingredient> ingredient(String name) {
    return Optional.ofNullable(tables.ingredients().get(name));
  }

  Optional<Price> price(String ingredient) {
    return tables.price(ingredient, days.prices());
  }

  Optional<ResolvedPremix> premix(String code) {
    return Optional.ofNullable(premixes.get(code));
  }

  Optional<Profile> profile(String name) {
    return Optional.ofNullable(profiles.get(name));
  }

  SortedSet<String> profileNames() {
    return new TreeSet<>(profiles.keySet());
  }

  /** The profiles of law of the jurisdiction, by name. */
  List<Profile> law() {
    Optional<String> jurisdiction = tables.settings().jurisdiction();
    return profiles.values().stream()
        .filter(profile -> jurisdiction.isPresent() && profile.kind() == Limit.Kind.LAW)
        .filter(profile -> profile.jurisdiction().equals(jurisdiction))
        .sorted(Comparator.comparing(Profile::name))
        .toList();
  }

  /** All that can stand as the subject of a line. */
  SortedSet<String> materials() {
    TreeSet<String> names = new TreeSet<>(tables.ingredients().keySet());
    names.addAll(premixes.keySet());
    names.addAll(brokenPremixes.keySet());
    return names;
  }

  /** The records of batches of a recipe or premix, by their numbers. */
  List<BatchRecord> records(String code) {
    return tables.batches().values().stream().filter(one -> one.code().equals(code)).toList();
  }

  /** The ingredient that had this name before. */
  Optional<String> formerly(String name) {
    String now = null;
    for (Ingredient one : tables.ingredients().values()) {
      now = one.formerly().contains(name) ? one.name() : now;
    }
    return Optional.ofNullable(now);
  }
}
