package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.finding.Finding;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether the contents of an ingredient can be true, those for any species and those for each: it
 * has water, and what {@link WholeChecks} looks at.
 */
final class IngredientChecks {
  /** A deviation between lots of so great a part of the mean: common sense, no source. */
  private static final double WIDEST = 0.6;

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
    if (whole && nutrients.moisture().isPresent() && !hasMoisture()) {
      Content bound = bound();
      remarks.add(
          bound == null
              ? NutrientFindings.noMoisture(ingredient.declared(), ingredient.name())
              : NutrientFindings.moistureBound(bound, ingredient.name()));
    }
    WholeChecks wholes = new WholeChecks(ingredient, nutrients, remarks);
    wholes.look(told(Optional.empty()), "", true);
    for (String species : species()) {
      wholes.look(told(Optional.of(species)), " for " + species, changesTheSum(species));
    }
    for (ContentBlock block : ingredient.contents()) {
      for (Map.Entry<String, Content> told : block.byNutrient().entrySet()) {
        spread(told.getKey(), told.getValue());
      }
    }
  }

  private void spread(String nutrient, Content told) {
    boolean wide = told.spread().isPresent() && told.spread().getAsDouble() > WIDEST * told.high();
    if (wide && !isDoubted(told)) {
      remarks.add(UnusualFindings.wide(nutrient, told));
    }
  }

  /** Whether the figure itself has been told of. */
  private boolean isDoubted(Content told) {
    for (Finding finding : remarks.findings()) {
      if (finding.span().equals(told.place())) {
        return true;
      }
    }
    return false;
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
}
