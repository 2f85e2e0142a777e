package dev.pellucid.engine.data;

import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How much of a nutrient ingredients of some groups usually hold. A content outside is most often a
 * slipped decimal point or a wrong unit.
 *
 * @param groups of ingredients; none: any ingredient
 * @param asAdditive whether it is for what is an additive of this nutrient, and for nothing else
 * @param of the nutrient of which it is told as a part; empty: as a part of the ingredient
 * @param low in the base of its kind
 * @param high in the base of its kind
 */
public record Usual(
    Set<String> groups,
    boolean asAdditive,
    Optional<String> of,
    double low,
    double high,
    String asWritten,
    Source source,
    Span place) {
  public Usual {
    groups = Set.copyOf(groups);
  }

  /** The first row of a nutrient that is for an ingredient; none where no row is. */
  static @Nullable Usual of(Nutrient nutrient, Ingredient ingredient) {
    for (Usual row : nutrient.usual()) {
      if (row.isFor(ingredient, nutrient)) {
        return row;
      }
    }
    return null;
  }

  private boolean isFor(Ingredient ingredient, Nutrient nutrient) {
    return (groups.isEmpty() || group(ingredient).isPresent())
        && (!asAdditive || isAdditive(ingredient, nutrient));
  }

  private static boolean isAdditive(Ingredient ingredient, Nutrient nutrient) {
    Optional<Additive> additive = ingredient.additive();
    return additive.isPresent() && additive.get().nutrient().orElse("").equals(nutrient.name());
  }

  /** The group of an ingredient for which it is told. */
  Optional<String> group(Ingredient ingredient) {
    String first = null;
    for (String group : groups) {
      boolean before = first == null || group.compareTo(first) < 0;
      first = before && ingredient.groups().contains(group) ? group : first;
    }
    return Optional.ofNullable(first);
  }

  boolean holds(double value) {
    return Closeness.isAtLeast(value, low) && Closeness.isAtMost(value, high);
  }
}
