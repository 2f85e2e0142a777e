package dev.pellucid.engine.resolve;

import java.util.Optional;

/** What finished feeds are made of, for lines that work them in again. */
@FunctionalInterface
public interface Reworks {
  /** Where no feed is there to be worked in. */
  Reworks NONE = recipe -> Optional.empty();

  /** Empty where the recipe must be fixed first. */
  Optional<Material.Reworked> of(String recipe);

  /** A thing that is the same object only while it is made, or cannot be made, of the same. */
  default Optional<?> state(String recipe) {
    return of(recipe);
  }

  /** What was looked up to make it. */
  default Reads behind(String recipe) {
    return Reads.NONE;
  }
}
