package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Form;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Bulk densities in kg per litre.
 *
 * @param byForm for ingredients that tell none of their own
 * @param wetMash of a mix with its water
 */
public record Densities(Map<Form, Double> byForm, OptionalDouble wetMash) {
  public static final Densities NONE = new Densities(Map.of(), OptionalDouble.empty());

  public Densities {
    byForm = Map.copyOf(byForm);
  }

  /** Of an ingredient: its own, or that of its form. */
  public OptionalDouble of(Ingredient ingredient) {
    if (ingredient.bulkDensity().isPresent()) {
      return ingredient.bulkDensity();
    }
    return of(ingredient.form());
  }

  /** Of anything of a form. */
  public OptionalDouble of(Form form) {
    Double density = byForm.get(form);
    return density == null ? OptionalDouble.empty() : OptionalDouble.of(density);
  }
}
