package dev.pellucid.engine.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a batch takes of the store.
 *
 * @param lots the numbers to take for a line, by its name, in the order in which they are emptied
 * @param splits of lines that take more than one lot
 * @param lacking what the store does not hold enough of
 */
public record FromStore(Map<String, List<String>> lots, List<Split> splits, List<Lacking> lacking) {
  static final FromStore UNKNOWN = new FromStore(Map.of(), List.of(), List.of());

  public FromStore {
    lots = Collections.unmodifiableMap(new LinkedHashMap<>(lots));
    splits = List.copyOf(splits);
    lacking = List.copyOf(lacking);
  }

  /** So many kg of a lot. */
  public record Taken(String number, double kg) {}

  /** A line that takes the lots one after the other. */
  public record Split(String title, List<Taken> taken) {
    public Split {
      taken = List.copyOf(taken);
    }
  }

  /** So many kg of a line are not there. */
  public record Lacking(String title, double kg) {}

  String cell(String line) {
    return String.join(", ", lots.getOrDefault(line, List.of()));
  }
}
