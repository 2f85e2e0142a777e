package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Certainty;
import java.util.List;

/** What the rows of a feed leave open of its figures. */
final class OpenContents {
  /** Beside what {@link Untold} tells: something is not told, and there is room for it. */
  private static final int ROOM_UNTOLD = 128;

  private final ComputedFeed feed;

  /** Of each nutrient, what some row that goes into the feed leaves open. */
  private final byte[] any;

  OpenContents(ComputedFeed feed) {
    this.feed = feed;
    this.any = new byte[feed.nutrients().count()];
    for (Row row : feed.rows()) {
      if (row.kgRichest() != 0) {
        Untold untold = row.composition().untold();
        for (int i = 0; i < any.length; i++) {
          any[i] |= (byte) untold.of(i);
        }
      }
    }
  }

  /**
   * What is open of a sum.
   *
   * @param spreadUnknown whether some content has no known spread
   * @param unbounded whether something is not told and nothing bounds it
   * @param more whether there may be more than is told
   * @param less whether there may be less
   * @param unknownShare the part of all that is weighed whose content is not told
   */
  record Gaps(
      boolean spreadUnknown, boolean unbounded, boolean more, boolean less, double unknownShare) {
    private static final Gaps NONE = new Gaps(false, false, false, false, 0);

    Certainty certainty() {
      return Certainty.of(more, less);
    }

    /** Of a quotient: with more above or less below there is more of it. */
    Certainty over(Gaps below) {
      return Certainty.of(more || below.less, less || below.more);
    }
  }

  /** Whether some content hangs on a species or a process that the recipe does not tell. */
  boolean hangsOnFeed(List<Nutrient> nutrients) {
    for (Nutrient nutrient : nutrients) {
      if ((any[nutrient.index()] & Untold.FEED_UNTOLD) != 0) {
        return true;
      }
    }
    return false;
  }

  /** Of some nutrients together, in the mass at an end. */
  Gaps of(int[] nutrients, Scenario mass) {
    for (int nutrient : nutrients) {
      if ((any[nutrient] & Untold.ANY) != 0) {
        return found(nutrients, mass);
      }
    }
    return Gaps.NONE;
  }

  private Gaps found(int[] nutrients, Scenario mass) {
    int all = 0;
    double unknown = 0;
    double whole = 0;
    for (Row row : feed.rows()) {
      double kg = row.kg(mass);
      whole += kg;
      if (row.kgRichest() != 0) {
        int answers = answers(row, nutrients);
        all |= answers;
        unknown += (answers & ROOM_UNTOLD) != 0 ? kg : 0;
      }
    }
    return new Gaps(
        (all & Untold.SPREAD_UNKNOWN) != 0,
        (all & Untold.UNBOUNDED) != 0,
        (all & Untold.MAYBE_MORE) != 0,
        (all & Untold.MAYBE_LESS) != 0,
        whole > 0 ? unknown / whole : 0);
  }

  /** What a row leaves open of some nutrients together. */
  private int answers(Row row, int[] nutrients) {
    Untold untold = row.composition().untold();
    int all = 0;
    for (int nutrient : nutrients) {
      int answers = untold.of(nutrient);
      int both = Untold.UNKNOWN | Untold.MAYBE_MORE;
      all |= (answers & both) == both ? ROOM_UNTOLD : 0;
      all |= counts(row, nutrient) ? answers : answers & ~(Untold.MAYBE_MORE | Untold.MAYBE_LESS);
    }
    return all;
  }

  /** Whether the content of a row reaches the figure at all; water may go off. */
  private boolean counts(Row row, int nutrient) {
    return !feed.nutrients().isMoisture(nutrient) || feed.keepsItsWater(row);
  }
}
