package dev.pellucid.engine.docs;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** A text with lines left out against the whole of it. */
final class ShownLines {
  private ShownLines() {}

  /**
   * The first line that the whole does not have, or not in this order; empty where it has all. What
   * shows nothing is not there.
   */
  static Optional<String> missing(List<String> whole, List<String> shown) {
    Iterator<String> lines = whole.iterator();
    List<String> kept = shown.stream().filter(line -> !line.isBlank()).toList();
    for (String line : kept) {
      boolean found = false;
      while (!found && lines.hasNext()) {
        found = lines.next().stripTrailing().equals(line.stripTrailing());
      }
      if (!found) {
        return Optional.of(line);
      }
    }
    return kept.isEmpty() ? Optional.of("any line at all") : Optional.empty();
  }
}
