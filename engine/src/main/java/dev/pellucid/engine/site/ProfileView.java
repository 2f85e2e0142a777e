package dev.pellucid.engine.site;

import dev.pellucid.engine.account.Held;
import java.util.List;

/**
 * What the pages tell of one profile of limits.
 *
 * @param kind need, practice or law
 * @param whom species, sizes and place that it is for
 * @param held how each feed stands with each of its limits
 */
public record ProfileView(String name, String title, String kind, String whom, List<InFeed> held) {
  public ProfileView {
    held = List.copyOf(held);
  }

  /** A limit in one feed. */
  public record InFeed(String code, String title, Held limit) {}

  /** How many feeds it holds. */
  long feeds() {
    return held.stream().map(InFeed::code).distinct().count();
  }
}
