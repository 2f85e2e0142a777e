package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.measure.Closeness;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether the contents of an ingredient can be true together: it has water, its parts are not more
 * than the whole, and no part is more than the whole it is a part of.
 */
final class IngredientChecks {
  /** Rounded figures of a table may add up to a little more than the whole. */
  private static final double MOST = 1.005;

  /**
   * A nutrient of which an ingredient consists. Crude protein is nitrogen × 6.25, so a pure amino
   * acid is rightly more than its crude protein: methionine has 9.39 % nitrogen, hence 58.7 %.
   */
  private static final double PURE = 0.9;

  private final Ingredient ingredient;
  private final Nutrients nutrients;
  private final Remarks remarks;

  IngredientChecks(Ingredient ingredient, Nutrients nutrients, Remarks remarks) {
    this.ingredient = ingredient;
    this.nutrients = nutrients;
    this.remarks = remarks;
  }

  /**
   * @param whole whether all of the file could be read, so that what is absent is really absent
   */
  void run(boolean whole) {
    Map<String, Content> general = told(Optional.empty());
    if (whole && nutrients.moisture().isPresent() && !hasMoisture()) {
      Content bound = bound();
      remarks.add(
          bound == null
              ? NutrientFindings.noMoisture(ingredient.declared(), ingredient.name())
              : NutrientFindings.moistureBound(bound, ingredient.name()));
    }
    Set<Content> reported = new LinkedHashSet<>();
    sum(general, "");
    parts(general, reported);
    for (String species : species()) {
      Map<String, Content> own = told(Optional.of(species));
      if (changesTheSum(species)) {
        sum(own, " for " + species);
      }
      parts(own, reported);
    }
  }

  /** Whether it tells a moisture that can be reckoned with, in a folder that tells of moisture. */
  boolean hasMoisture() {
    return nutrients.named(Nutrients.MOISTURE).isEmpty() || (tellsMoisture() && bound() == null);
  }

  private boolean tellsMoisture() {
    for (ContentBlock block : ingredient.contents()) {
      if (block.species().isEmpty() && block.byNutrient().containsKey(Nutrients.MOISTURE)) {
        return true;
      }
    }
    return false;
  }

  /** A moisture of which only the most is told: no value, and nothing can be reckoned with it. */
  private @Nullable Content bound() {
    for (ContentBlock block : ingredient.contents()) {
      Content moisture = block.byNutrient().get(Nutrients.MOISTURE);
      if (moisture != null && moisture.isBound()) {
        return moisture;
      }
    }
    return null;
  }

  private Set<String> species() {
    Set<String> species = new LinkedHashSet<>();
    for (ContentBlock block : ingredient.contents()) {
      if (block.species().isPresent()) {
        species.add(block.species().get());
      }
    }
    return species;
  }

  private boolean changesTheSum(String species) {
    for (ContentBlock block : ingredient.contents()) {
      if (block.species().isPresent() && block.species().get().equals(species)) {
        for (String name : block.byNutrient().keySet()) {
          if (isOfTheWhole(name)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** What holds for a species: its own figures, and the general ones beside them. */
  private Map<String, Content> told(Optional<String> species) {
    Map<String, Content> told = new HashMap<>();
    for (ContentBlock block : ingredient.contents()) {
      if (block.species().isEmpty() || block.species().equals(species)) {
        for (Map.Entry<String, Content> each : block.byNutrient().entrySet()) {
          told.putIfAbsent(each.getKey(), each.getValue());
        }
      }
    }
    return inOrder(told);
  }

  private Map<String, Content> inOrder(Map<String, Content> told) {
    Map<String, Content> ordered = new LinkedHashMap<>();
    for (Nutrient nutrient : nutrients.inOrder()) {
      Content content = told.get(nutrient.name());
      if (content != null) {
        ordered.put(nutrient.name(), content);
      }
    }
    return ordered;
  }

  private boolean isOfTheWhole(String name) {
    Optional<Nutrient> nutrient = nutrients.named(name);
    return nutrient.isPresent() && nutrient.get().ofTheWhole();
  }

  private void sum(Map<String, Content> told, String whom) {
    double sum = 0;
    for (Map.Entry<String, Content> each : told.entrySet()) {
      if (isOfTheWhole(each.getKey())) {
        sum += each.getValue().low();
      }
    }
    if (sum > MOST + Closeness.PART) {
      String percent = String.format(Locale.ROOT, "%.2f", sum * 100);
      remarks.add(NutrientFindings.overWhole(ingredient.declared(), percent, whom));
    }
  }

  private void parts(Map<String, Content> told, Set<Content> reported) {
    for (Map.Entry<String, Content> each : told.entrySet()) {
      Optional<Nutrient> nutrient = nutrients.named(each.getKey());
      Optional<String> whole = nutrient.isPresent() ? nutrient.get().partOf() : Optional.empty();
      Content most = whole.isPresent() ? told.get(whole.get()) : null;
      Content part = each.getValue();
      boolean over = most != null && Closeness.isAbove(part.low(), most.high());
      if (most != null && over && part.low() < PURE && reported.add(part)) {
        remarks.add(NutrientFindings.partOverWhole(part, each.getKey(), most, whole.orElse("")));
      }
    }
  }
}
