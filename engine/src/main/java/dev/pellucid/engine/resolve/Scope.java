package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Price;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Everything that a recipe may name. Premixes and profiles come in one after the other while the
 * folder is prepared, each when all that it may name is there; after that nothing changes.
 *
 * <p>What every recipe would work out alike is worked out here once: the ingredients as lines take
 * them, the law, and which records are of which code.
 */
final class Scope {
  private static final Material.Reworked NOTHING =
      new Material.Reworked(ResolvedPremix.nothing(), Optional.empty());

  private final FeedTables tables;
  private final Days days;
  private final Map<String, Span> recipes;
  private final Reworks reworks;
  private final Map<String, Profile> profiles;
  private final Map<String, ResolvedPremix> premixes;
  private final SortedMap<String, Object> brokenPremixes;
  private final Map<String, Stocked> stocked;
  private final Map<String, List<BatchRecord>> records;
  private final List<Subject.Nutrients> alone;
  private final Map<List<String>, MergedLimits> limits;
  private final Reads ofEach;
  private final SortedMap<String, Profile> ofMaterials;
  private List<Profile> law;
  private List<Profile> binding;

  /**
   * An ingredient that could be read whole, as a line takes it, and the two notes that one did.
   *
   * @param line with its price on the day
   */
  record Stocked(Material.Single line, Ref ingredient, Ref price) {}

  /**
   * @param recipes codes of recipes, which a line may name as rework only, and where each is
   *     declared
   * @param reworks what finished feeds are made of
   * @param days by which prices and waivers count
   */
  Scope(FeedTables tables, Map<String, Span> recipes, Reworks reworks, Days days) {
    this.tables = tables;
    this.days = days;
    this.recipes = recipes;
    this.reworks = reworks;
    this.profiles = new HashMap<>();
    this.premixes = new TreeMap<>();
    this.brokenPremixes = new TreeMap<>();
    this.stocked = stocked(tables, days);
    this.records = records(tables);
    this.alone = alone(tables.nutrients());
    this.limits = new ConcurrentHashMap<>();
    this.ofEach = lookedUpForEach();
    this.ofMaterials = new TreeMap<>();
    this.law = List.of();
    this.binding = List.of();
  }

  private Scope(Scope other, Reworks reworks) {
    this.tables = other.tables;
    this.days = other.days;
    this.recipes = other.recipes;
    this.reworks = reworks;
    this.profiles = other.profiles;
    this.premixes = other.premixes;
    this.brokenPremixes = other.brokenPremixes;
    this.stocked = other.stocked;
    this.records = other.records;
    this.alone = other.alone;
    this.limits = other.limits;
    this.ofEach = other.ofEach;
    this.ofMaterials = other.ofMaterials;
    this.law = other.law;
    this.binding = other.binding;
  }

  /** The same for a recipe whose feed is to be worked into others: its own rework is left out. */
  Scope ofSource() {
    return new Scope(this, code -> Optional.of(NOTHING));
  }

  private static Map<String, Stocked> stocked(FeedTables tables, Days days) {
    Map<String, Stocked> stocked = new HashMap<>();
    for (Ingredient one : tables.ingredients().values()) {
      if (one.whole()) {
        stocked.put(
            one.name(),
            new Stocked(
                new Material.Single(one, tables.price(one.name(), days.prices())),
                new Ref(Ref.Kind.INGREDIENT, one.name()),
                new Ref(Ref.Kind.PRICE, one.name())));
      }
    }
    return stocked;
  }

  private static List<Subject.Nutrients> alone(Nutrients nutrients) {
    List<Subject.Nutrients> alone = new ArrayList<>();
    for (Nutrient nutrient : nutrients.inOrder()) {
      alone.add(Subject.Nutrients.alone(nutrient));
    }
    return alone;
  }

  private static Map<String, List<BatchRecord>> records(FeedTables tables) {
    Map<String, List<BatchRecord>> records = new HashMap<>();
    for (BatchRecord one : tables.batches().values()) {
      records.computeIfAbsent(one.code(), code -> new ArrayList<>()).add(one);
    }
    return records;
  }

  private Reads lookedUpForEach() {
    List<Ref.Kind> each =
        List.of(Ref.Kind.FRAME, Ref.Kind.PRACTICE, Ref.Kind.LABEL, Ref.Kind.PRICES);
    Reads.Notes notes = new Reads.Notes(each.size());
    for (Ref.Kind kind : each) {
      Ref all = Ref.only(kind);
      notes.add(all, find(all));
    }
    return notes.reads();
  }

  /** Takes in a premix that is made. */
  void take(ResolvedPremix premix) {
    premixes.put(premix.code(), premix);
    brokenPremixes.remove(premix.code());
  }

  /**
   * Says that a premix cannot be used.
   *
   * @param why the same object only while the reasons are the same
   */
  void takeBroken(String code, Object why) {
    brokenPremixes.put(code, why);
  }

  /** Takes in a profile: one that bounds raw materials stands apart, for no feed can meet it. */
  void take(Profile profile) {
    if (profile.boundsMaterials()) {
      ofMaterials.put(profile.name(), profile);
      return;
    }
    Profile before = profiles.put(profile.name(), profile);
    if (isHere(profile) || before != null && isHere(before)) {
      List<Profile> all = new ArrayList<>();
      for (Profile one : profiles.values()) {
        if (isHere(one)) {
          all.add(one);
        }
      }
      all.sort(Comparator.comparing(Profile::name));
      binding = List.copyOf(all);
      all.removeIf(one -> one.kind() != Limit.Kind.LAW);
      law = List.copyOf(all);
    }
  }

  /** Whether it binds by itself, and in the jurisdiction of this folder. */
  private boolean isHere(Profile profile) {
    Optional<String> jurisdiction = tables.settings().jurisdiction();
    return jurisdiction.isPresent()
        && profile.kind().bindsByItself()
        && profile.jurisdiction().equals(jurisdiction);
  }

  /** What a reference finds here. */
  Optional<?> find(Ref ref) {
    String name = ref.name();
    return switch (ref.kind()) {
      case FRAME -> Optional.of(tables.nutrients());
      case PRACTICE -> Optional.of(tables.practice());
      case PLANT -> Optional.ofNullable(tables.plants().get(name));
      case PLANTS -> Optional.of(tables.plants().keySet());
      case LABEL -> tables.label();
      case LAW -> Optional.of(binding());
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
      case STORE ->
          Optional.of(
              List.of(tables.lots(), tables.batches(), tables.ingredients(), maximaOfMaterials()));
    };
  }

  FeedTables tables() {
    return tables;
  }

  Days days() {
    return days;
  }

  /** The codes of all recipes, and where each is declared. */
  Map<String, Span> recipes() {
    return recipes;
  }

  Reworks reworks() {
    return reworks;
  }

  /** What is looked up for every file, whatever it says. */
  Reads ofEach() {
    return ofEach;
  }

  /** By name, those that could be read whole. */
  Map<String, Stocked> stocked() {
    return stocked;
  }

  /** One nutrient by itself, as something that a limit is about. */
  Subject.Nutrients alone(Nutrient nutrient) {
    return alone.get(nutrient.index());
  }

  Optional<Ingredient> ingredient(String name) {
    return Optional.ofNullable(tables.ingredients().get(name));
  }

  Optional<Price> price(String ingredient) {
    return tables.price(ingredient, days.prices());
  }

  /** By code, those that could be made. */
  Map<String, ResolvedPremix> premixes() {
    return premixes;
  }

  Optional<ResolvedPremix> premix(String code) {
    return Optional.ofNullable(premixes.get(code));
  }

  /** Whether a premix is there whose own file says why it cannot be used. */
  boolean isBrokenPremix(String code) {
    return brokenPremixes.containsKey(code);
  }

  /** By name, those of law included. */
  Map<String, Profile> profiles() {
    return profiles;
  }

  Optional<Profile> profile(String name) {
    return Optional.ofNullable(profiles.get(name));
  }

  SortedSet<String> profileNames() {
    return new TreeSet<>(profiles.keySet());
  }

  /** The profiles of law of the jurisdiction, by name. */
  List<Profile> law() {
    return law;
  }

  /** The same with those of its guidance. */
  List<Profile> binding() {
    return binding;
  }

  /** Whether a profile bounds raw materials. */
  boolean boundsMaterials(String profile) {
    return ofMaterials.containsKey(profile);
  }

  /** The profiles that bound raw materials, by name. */
  List<Profile> maximaOfMaterials() {
    return List.copyOf(ofMaterials.values());
  }

  /**
   * What some profiles of this scope ask together, worked out for the first recipe that meets just
   * these.
   */
  MergedLimits limitsOf(List<Profile> profiles) {
    List<String> names = new ArrayList<>(profiles.size());
    for (Profile profile : profiles) {
      names.add(profile.name());
    }
    MergedLimits known = limits.get(names);
    if (known == null) {
      known = new MergedLimits(profiles);
      limits.put(names, known);
    }
    return known;
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
    return records.getOrDefault(code, List.of());
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
