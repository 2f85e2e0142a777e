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

  boolean isFor(Species one) {
    return species.filter(one::is).isPresent();
  }

  /** A narrower row wins over a wider one. */
  int narrowness() {
    return (species.isPresent() ? 2 : 0) + (process.isPresent() ? 1 : 0);
  }
}
