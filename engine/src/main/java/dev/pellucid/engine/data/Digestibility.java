package dev.pellucid.engine.data;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Apparent digestibility coefficients of an ingredient.
 *
 * @param species a species or group of species; empty: any
 * @param process a kind of process; empty: any
 * @param coefficients by the name of the nutrient, each a part of one
 */
public record Digestibility(
    Optional<String> species,
    Optional<ProcessKind> process,
    Source source,
    Map<String, Double> coefficients) {
  public Digestibility {
    coefficients = Map.copyOf(coefficients);
  }

  /** How the feed is shaped. */
  public enum ProcessKind {
    MASH,
    PELLETED,
    EXTRUDED;

    /** As written in a file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One coefficient as it was found.
   *
   * @param of the nutrient whose it is; of another than was asked for where that stands in
   * @param part of one
   * @param told where it is told
   */
  public record Coefficient(String of, double part, Digestibility told) {
    /** Whether it is that of another nutrient, which stands in for the own one. */
    public boolean standsInFor(Nutrient digestible) {
      return !digestible.digestibleOf().orElse(of).equals(of);
    }
  }

  /** Whether it holds for a species, where one is told, and for a kind of process. */
  boolean isFor(Optional<Species> fed, ProcessKind kind) {
    boolean forFed = species.isEmpty() || (fed.isPresent() && fed.get().is(species.get()));
    return forFed && (process.isEmpty() || process.get() == kind);
  }

  /** A narrower row wins over a wider one. */
  int narrowness() {
    return (species.isPresent() ? 2 : 0) + (process.isPresent() ? 1 : 0);
  }
}
