package dev.pellucid.engine.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a batch takes of the store.
 *
 * @param lots what to take for a line, by its name, in the order in which they are emptied
 * @param splits of lines that take more than one lot
 * @param lacking what the store does not hold enough of
 * @param afterPlanned how many planned batches were given their lots before; 0 of a planned batch
 */
public record FromStore(
    Map<String, List<Taken>> lots, List<Split> splits, List<Lacking> lacking, int afterPlanned) {
  static final FromStore UNKNOWN = new FromStore(Map.of(), List.of(), List.of(), 0);

  public FromStore {
    lots = Collections.unmodifiableMap(new LinkedHashMap<>(lots));
    splits = List.copyOf(splits);
    lacking = List.copyOf(lacking);
  }

  /**
   * So many kg of a lot, of a batch, or of a bin with several lots.
   *
   * @param number of the lot or batch; of a bin with several its name
   * @param bin what it is taken from; empty where it lies in none
   * @param lots those that it can be
   * @param planned whether it is a batch that is still to be made
   */
  public record Taken(String number, String bin, List<String> lots, double kg, boolean planned) {
    public Taken {
      lots = List.copyOf(lots);
    }

    /** Whether several lots can be in what is taken. */
    public boolean isMixed() {
      return lots.size() > 1;
    }

    /** {@code SB-0411}, {@code SB-0411 from bin B3}, {@code bin B3: SB-0411, SB-0498}. */
    public String words() {
      if (isMixed()) {
        return "bin " + bin + ": " + String.join(", ", lots);
      }
      if (lots.isEmpty()) {
        return "bin " + bin;
      }
      return bin.isEmpty() ? number : number + " from bin " + bin;
    }
  }

  /** A line that takes the lots one after the other. */
  public record Split(String title, List<Taken> taken) {
    public Split {
      taken = List.copyOf(taken);
    }
  }

  /**
   * So many kg of a line are not there.
   *
   * @param passedOver why others of which something is left are not taken
   */
  public record Lacking(String title, double kg, List<String> passedOver) {
    public Lacking {
      passedOver = List.copyOf(passedOver);
    }
  }

  String cell(String line) {
    return lots.getOrDefault(line, List.of()).stream()
        .map(Taken::words)
        .collect(Collectors.joining(", "));
  }

  /** Batches that are to be made before this one. */
  public List<String> toBeMade() {
    return lots.values().stream()
        .flatMap(List::stream)
        .filter(Taken::planned)
        .map(Taken::number)
        .distinct()
        .toList();
  }
}
