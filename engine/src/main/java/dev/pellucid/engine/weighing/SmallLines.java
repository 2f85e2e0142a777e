package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.resolve.Line;
import java.util.BitSet;
import java.util.Set;

/**
 * Which lines are weighed apart and checked by a second person: a premix, what harms by the gram,
 * or less than 1 % of the feed (common practice, no source). Never the {@code rest}.
 */
public final class SmallLines {
  private static final double SMALL_PERCENT = 1;
  private static final Set<Trait> BY_THE_GRAM =
      Set.of(Trait.VITAMIN, Trait.CHOLINE, Trait.TRACE_SALT, Trait.ANTIOXIDANT, Trait.MEDICATED);

  private SmallLines() {}

  public static boolean has(ComputedFeed feed, Line line) {
    return of(feed).get(line.index());
  }

  /** Their indexes. */
  static BitSet of(ComputedFeed feed) {
    BitSet small = new BitSet();
    for (Row row : feed.rows()) {
      Line line = row.line();
      boolean apart =
          line.material().premixed().isPresent()
              || line.designed().kgPer100() < SMALL_PERCENT
              || harmsByTheGram(row);
      if (apart && !line.rest()) {
        small.set(line.index());
      }
    }
    return small;
  }

  private static boolean harmsByTheGram(Row row) {
    for (Trait trait : row.ingredient().traits()) {
      if (BY_THE_GRAM.contains(trait)) {
        return true;
      }
    }
    return false;
  }
}
