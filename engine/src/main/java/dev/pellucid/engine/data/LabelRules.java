package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One file of {@code label/}: what a label must tell, how far an analysis may lie from it, and the
 * words on the bag.
 *
 * @param jurisdiction whose rules they are, where the file says so
 * @param rounding the part of a tolerance that the rounding of a label may take without a word
 * @param tolerances by the name of the nutrient
 * @param additivesApart whether additives stand in a list of their own, with the added amount where
 *     the law has a maximum; else they stand among the ingredients
 * @param otherAmounts whether additives that need not be told and bring a nutrient are told with
 *     their amount too
 * @param mustTell what else a label must tell, by what it is
 * @param declaredAdditives which additives must be told
 * @param sayings sentences that feed law asks where certain ingredients are in
 * @param modified words behind the name of what comes of genetically modified plants
 * @param storage sentences on the bag
 * @param cautions sentences on the bag
 */
public record LabelRules(
    String name,
    String title,
    Optional<String> jurisdiction,
    Source source,
    double rounding,
    Map<String, Tolerance> tolerances,
    List<Compulsory> compulsory,
    boolean additivesApart,
    boolean otherAmounts,
    Map<Must, Asked> mustTell,
    List<DeclaredAdditives> declaredAdditives,
    List<Saying> sayings,
    List<ModifiedWords> modified,
    DayOrder dayOrder,
    Map<LabelWord, String> words,
    List<String> storage,
    List<String> cautions,
    Span declared) {
  public LabelRules {
    tolerances = Map.copyOf(tolerances);
    compulsory = List.copyOf(compulsory);
    mustTell = Map.copyOf(mustTell);
    declaredAdditives = List.copyOf(declaredAdditives);
    sayings = List.copyOf(sayings);
    modified = List.copyOf(modified);
    words = Map.copyOf(words);
    storage = List.copyOf(storage);
    cautions = List.copyOf(cautions);
  }

  /**
   * What must be declared.
   *
   * @param nutrient its name
   * @param above only where the feed holds more than this, in the base of the kind
   * @param species only for this species or group
   */
  public record Compulsory(
      String nutrient, OptionalDouble above, Optional<String> species, Span place) {}

  /** What a label must tell that stands in no recipe. */
  public enum Must {
    /** What feed law calls each ingredient. */
    INGREDIENT_NAMES,
    /** The identification number of each additive that must be told. */
    ADDITIVE_NUMBERS,
    /** Who answers for the feed, and the address. */
    MAKER,
    APPROVAL_NUMBER,
    /** How the feed is used. */
    FEEDING
  }

  /**
   * Where the law asks something.
   *
   * @param article of which act
   */
  public record Asked(String article, Source source, Span place) {}

  /**
   * Additives that must be told with their amount.
   *
   * @param nutrients those that bring one of these
   * @param functionalGroups those of one of these
   */
  public record DeclaredAdditives(
      List<String> nutrients, List<String> functionalGroups, Asked asked) {
    public DeclaredAdditives {
      nutrients = List.copyOf(nutrients);
      functionalGroups = List.copyOf(functionalGroups);
    }
  }

  /**
   * A sentence that the bag must say where certain ingredients are in.
   *
   * @param holds groups and ingredients
   * @param butNot groups and ingredients of these that do not count
   * @param species only for this species or group
   */
  public record Saying(
      List<String> holds,
      List<String> butNot,
      Optional<String> species,
      String words,
      Asked asked) {
    public Saying {
      holds = List.copyOf(holds);
      butNot = List.copyOf(butNot);
    }

    /** Whether an ingredient brings it on the bag of a feed. */
    public boolean isFor(Ingredient one, Optional<Species> fed) {
      boolean thisSpecies = species.isEmpty() || fed.isPresent() && fed.get().is(species.get());
      return thisSpecies && one.isOf(holds) && !one.isOf(butNot);
    }
  }

  /**
   * Words that follow the name of an ingredient that comes of genetically modified plants.
   *
   * @param holds the groups and ingredients that commonly do, of which it must be known
   */
  public record ModifiedWords(List<String> holds, String words, Asked asked) {
    public ModifiedWords {
      holds = List.copyOf(holds);
    }
  }

  /** The words for an ingredient if it comes of genetically modified plants. */
  public Optional<ModifiedWords> modified(Ingredient one) {
    for (ModifiedWords each : modified) {
      if (one.isOf(each.holds())) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  /** Why an additive must be told; empty where it need not. */
  public Optional<Asked> declares(Additive additive) {
    for (DeclaredAdditives each : declaredAdditives) {
      boolean brings =
          additive.nutrient().isPresent() && each.nutrients().contains(additive.nutrient().get());
      if (brings || each.functionalGroups().contains(additive.functionalGroup())) {
        return Optional.of(each.asked());
      }
    }
    return Optional.empty();
  }

  /** How a day is written on the bag. */
  public enum DayOrder {
    DAY_MONTH_YEAR("%3$02d/%2$02d/%1$04d"),
    MONTH_DAY_YEAR("%2$02d/%3$02d/%1$04d"),
    YEAR_MONTH_DAY("%1$04d-%2$02d-%3$02d");

    private final String pattern;

    DayOrder(String pattern) {
      this.pattern = pattern;
    }

    /** {@code 24/01/2027}. */
    public String words(LocalDate day) {
      return String.format(
          Locale.ROOT, pattern, day.getYear(), day.getMonthValue(), day.getDayOfMonth());
    }
  }

  /** The words of the file, or ours where it has none. */
  public String words(LabelWord word) {
    return words.getOrDefault(word, word.ours());
  }
}
