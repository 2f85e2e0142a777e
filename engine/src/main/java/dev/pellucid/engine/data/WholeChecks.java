package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Nutrient.Formula.Term;
import dev.pellucid.engine.data.OddContents.Odd;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether contents can be true together: what adds up to the whole is not more than it, no part is
 * more than what it is a part of, nor are all parts together, and each content is of a usual size.
 * What cannot be is told at the figure that is not usual; each figure is told once.
 */
final class WholeChecks {
  /** Rounded figures of a table may add up to a little more than the whole. */
  private static final double ROUNDING = 0.005;

  /** Contents of which one is ten times too high add up to so much at least, once it is fixed. */
  private static final double NEAR_THE_WHOLE = 0.95;

  /** Contents on dry matter beside the water as fed add up to so much at most. */
  private static final double DRY_MATTER = 1.16;

  /**
   * By how much all parts may pass their whole: amino acids set free weigh some 17 % more than the
   * same in a protein, and tables take figures from more than one lot.
   */
  private static final double MOST_PARTS = 1.2;

  /**
   * A nutrient of which an ingredient consists. Crude protein is nitrogen × 6.25, so a pure amino
   * acid is rightly more than its crude protein: methionine has 9.39 % nitrogen, hence 58.7 %.
   */
  private static final double PURE = 0.9;

  /** Tyrosine is 2.07 times its crude protein; no amino acid is more. */
  static final double MOST_PURE = 2.2;

  private final Ingredient ingredient;
  private final Nutrients nutrients;
  private final OddContents usual;
  private final Remarks remarks;
  private final Set<Content> reported = new LinkedHashSet<>();

  WholeChecks(Ingredient ingredient, Nutrients nutrients, Remarks remarks) {
    this.ingredient = ingredient;
    this.nutrients = nutrients;
    this.usual = new OddContents(ingredient, nutrients);
    this.remarks = remarks;
  }

  /**
   * @param told contents by the name of their nutrient, in the order of the nutrients
   * @param whom behind a sentence: for which species they are told
   * @param sums whether they are to be added up; they are not those of before
   */
  void look(Map<String, Content> told, String whom, boolean sums) {
    Map<String, Odd> odd = usual.of(told, whom.isEmpty());
    if (sums) {
      sum(told, odd, whom);
    }
    parts(told, odd);
    digested(told, odd);
    for (Odd one : odd.values()) {
      if (!isExplained(one, told) && reported.add(one.content())) {
        remarks.add(UnusualFindings.unusual(one));
      }
    }
  }

  /** Whether the whole of which it is an odd part was already said to be wrong. */
  private boolean isExplained(Odd part, Map<String, Content> told) {
    Optional<String> of = part.usual().of();
    Content whole = of.isPresent() ? told.get(of.get()) : null;
    return whole != null && !whole.equals(part.content()) && reported.contains(whole);
  }

  private void sum(Map<String, Content> told, Map<String, Odd> odd, String whom) {
    double sum = 0;
    List<String> added = new ArrayList<>();
    for (Map.Entry<String, Content> each : told.entrySet()) {
      Optional<Nutrient> nutrient = nutrients.named(each.getKey());
      if (nutrient.isPresent() && nutrient.get().ofTheWhole()) {
        sum += each.getValue().low();
        added.add(each.getKey());
      }
    }
    if (sum <= 1 + ROUNDING + Closeness.PART) {
      return;
    }
    Odd likely = high(added, odd);
    String slipped = likely == null ? slipped(added, told, sum, whom) : "";
    Content place = likely == null ? told.get(slipped) : likely.content();
    if (place == null) {
      remarks.add(NutrientFindings.overWhole(ingredient.declared(), sum, whom));
    } else if (reported.add(place)) {
      remarks.add(
          likely == null
              ? UnusualFindings.over(slipped, place, sum, whom)
              : UnusualFindings.over(likely, sum, whom));
    }
  }

  /**
   * The one nutrient of which a tenth would bring the sum to the whole or a little below; empty
   * where there is none, or more than one. A sum that is a little too high with much water in it
   * speaks of figures on dry matter.
   */
  private String slipped(List<String> added, Map<String, Content> told, double sum, String whom) {
    String slipped = "";
    for (String name : added) {
      Content one = told.get(name);
      double fixed = one == null ? 0 : sum - 0.9 * one.low();
      boolean water = name.equals(Nutrients.MOISTURE) && sum < DRY_MATTER;
      boolean fits = fixed <= 1 + ROUNDING && fixed >= NEAR_THE_WHOLE;
      if (fits && !water && (whom.isEmpty() || isOfSpecies(one))) {
        if (!slipped.isEmpty()) {
          return "";
        }
        slipped = name;
      }
    }
    return slipped;
  }

  private boolean isOfSpecies(@Nullable Content content) {
    for (ContentBlock block : ingredient.contents()) {
      if (block.species().isPresent() && block.byNutrient().containsValue(content)) {
        return true;
      }
    }
    return false;
  }

  private static @Nullable Odd high(List<String> names, Map<String, Odd> odd) {
    for (String name : names) {
      Odd one = odd.get(name);
      if (one != null && one.high()) {
        return one;
      }
    }
    return null;
  }

  private void parts(Map<String, Content> told, Map<String, Odd> odd) {
    Set<String> wholes = new LinkedHashSet<>();
    for (Map.Entry<String, Content> each : told.entrySet()) {
      Optional<Nutrient> nutrient = nutrients.named(each.getKey());
      Optional<String> whole = nutrient.isPresent() ? nutrient.get().partOf() : Optional.empty();
      if (whole.isPresent()) {
        wholes.add(whole.get());
      }
    }
    for (String whole : wholes) {
      OptionalDouble most = most(whole, told);
      if (most.isPresent()) {
        parts(whole, most.getAsDouble(), told, odd);
      }
    }
  }

  /** No more is digested than there is. */
  private void digested(Map<String, Content> told, Map<String, Odd> odd) {
    for (Map.Entry<String, Content> each : told.entrySet()) {
      Optional<Nutrient> part = nutrients.named(each.getKey());
      Optional<String> whole = part.isPresent() ? part.get().digestibleOf() : Optional.empty();
      OptionalDouble most = whole.isPresent() ? most(whole.get(), told) : OptionalDouble.empty();
      if (most.isPresent() && Closeness.isAbove(each.getValue().low(), most.getAsDouble())) {
        partOver(part.get(), whole.get(), most.getAsDouble(), told, odd);
      }
    }
  }

  /** The most that an ingredient can hold of a whole; empty where it cannot be known. */
  private OptionalDouble most(String whole, Map<String, Content> told) {
    Content content = told.get(whole);
    if (content != null) {
      return OptionalDouble.of(content.high());
    }
    Optional<Nutrient> nutrient = nutrients.named(whole);
    if (nutrient.isEmpty() || nutrient.get().formula().isEmpty()) {
      return OptionalDouble.empty();
    }
    double sum = nutrient.get().formula().get().constant() + ROUNDING;
    for (Term term : nutrient.get().formula().get().terms()) {
      Content one = told.get(term.nutrient());
      if (one == null) {
        return OptionalDouble.empty();
      }
      sum += term.factor() * (term.factor() < 0 ? one.low() : one.high());
    }
    // Where the others are more than the whole already, that is what is said.
    return sum < ROUNDING ? OptionalDouble.empty() : OptionalDouble.of(sum);
  }

  /** What is told of the parts of one whole. */
  private static final class Sum {
    private final List<Nutrient> over = new ArrayList<>();
    private double parts;
    private String largest = "";
    private double size;
  }

  private void parts(String whole, double most, Map<String, Content> told, Map<String, Odd> odd) {
    Sum sum = sum(whole, most, told);
    if (sum.over.size() > 1 && told.containsKey(whole)
        || sum.over.isEmpty() && Closeness.isAbove(sum.parts, MOST_PARTS * most)) {
      String part = sum.over.isEmpty() ? sum.largest : sum.over.get(0).name();
      partsOver(part, sum.parts, whole, most, told, odd);
      return;
    }
    for (Nutrient part : sum.over) {
      partOver(part, whole, most, told, odd);
    }
  }

  /**
   * Whether it is an additive of this that holds as much as is usual; who asks knows it is not odd.
   */
  private boolean isAdditive(Nutrient part) {
    Usual row = Usual.of(part, ingredient);
    return row != null && row.asAdditive();
  }

  private Sum sum(String whole, double most, Map<String, Content> told) {
    Sum sum = new Sum();
    for (Map.Entry<String, Content> each : told.entrySet()) {
      Optional<Nutrient> nutrient = nutrients.named(each.getKey());
      if (nutrient.isEmpty() || !nutrient.get().partOf().orElse("").equals(whole)) {
        continue;
      }
      double part = each.getValue().low();
      boolean pure = part >= PURE && part <= MOST_PURE * most;
      if (!pure && Closeness.isAbove(part, most)) {
        sum.over.add(nutrient.get());
      }
      boolean counts = !pure && nutrient.get().formula().isEmpty();
      sum.parts += counts ? part : 0;
      if (counts && part > sum.size) {
        sum.size = part;
        sum.largest = each.getKey();
      }
    }
    return sum;
  }

  private void partOver(
      Nutrient part, String whole, double most, Map<String, Content> told, Map<String, Odd> odd) {
    Content content = told.get(part.name());
    Odd likely = likely(part.name(), whole, odd);
    Content written = told.get(whole);
    Content likeliest = written != null && isAdditive(part) ? written : content;
    Content place = likely == null ? likeliest : likely.content();
    if (written != null && reported.contains(written)) {
      return;
    }
    if (content != null && place != null && reported.add(place)) {
      Finding finding = UnusualFindings.partOver(part, content, whole, most, written, place);
      remarks.add(likely == null ? finding : UnusualFindings.at(likely, finding));
    }
  }

  /**
   * @param part that speaks most against the whole
   */
  private void partsOver(
      String part,
      double sum,
      String whole,
      double most,
      Map<String, Content> told,
      Map<String, Odd> odd) {
    Odd likely = likely(part, whole, odd);
    Content content = told.get(whole);
    Content place = likely != null ? likely.content() : content != null ? content : told.get(part);
    if (place != null && reported.add(place)) {
      Finding finding = UnusualFindings.partsOver(whole, content, place, sum, most);
      remarks.add(likely == null ? finding : UnusualFindings.at(likely, finding));
    }
  }

  /** Which figure is wrong where a part is more than its whole, if one of them is not usual. */
  private @Nullable Odd likely(String part, String whole, Map<String, Odd> odd) {
    Odd tooMuch = odd.get(part);
    if (tooMuch != null) {
      return tooMuch;
    }
    Odd tooLittle = odd.get(whole);
    if (tooLittle != null) {
      return tooLittle;
    }
    Optional<Nutrient> nutrient = nutrients.named(whole);
    if (nutrient.isPresent() && nutrient.get().formula().isPresent()) {
      for (Term term : nutrient.get().formula().get().terms()) {
        Odd one = odd.get(term.nutrient());
        if (one != null) {
          return one;
        }
      }
    }
    return null;
  }
}
