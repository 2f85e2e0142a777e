package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.resolve.Line;
import java.util.Optional;

/** The rest takes what the other lines leave, so it cannot be left out. */
final class RestStays {
  private RestStays() {}

  static Optional<String> why(Posed posed) {
    Optional<Line> rest = posed.recipe().recipe().rest();
    String name = rest.isPresent() ? rest.get().material().name() : "";
    return posed.wishes().without().contains(name)
        ? Optional.of(
            name
                + " is the rest of this recipe and cannot go: write its share as a figure, and"
                + " rest on the line of another ingredient")
        : Optional.empty();
  }
}
