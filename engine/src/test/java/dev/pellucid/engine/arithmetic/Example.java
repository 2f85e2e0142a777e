package dev.pellucid.engine.arithmetic;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A worked example of the page.
 *
 * @param id by which its check is found
 * @param given what it begins with, by name
 * @param gives what comes out, by name
 */
record Example(String id, Map<String, Figure> given, Map<String, Figure> gives) {
  Example {
    given = new LinkedHashMap<>(given);
    gives = new LinkedHashMap<>(gives);
  }

  /** The same with another figure to begin with. */
  Example with(String name, Figure figure) {
    Map<String, Figure> other = new LinkedHashMap<>(given);
    other.put(name, figure);
    return new Example(id, other, gives);
  }

  /** What the page says comes out. */
  Map<String, String> printed() {
    Map<String, String> printed = new LinkedHashMap<>();
    gives.forEach((name, figure) -> printed.put(name, figure.text()));
    return printed;
  }

  /** What it would say if these came out, in the base of their units. */
  Map<String, String> printed(Map<String, Double> found) {
    if (!found.keySet().equals(gives.keySet())) {
      throw new AssertionError(id + " gives " + gives.keySet() + ", its check " + found.keySet());
    }
    Map<String, String> printed = new LinkedHashMap<>();
    gives.forEach((name, figure) -> printed.put(name, figure.printed(found.get(name))));
    return printed;
  }
}
