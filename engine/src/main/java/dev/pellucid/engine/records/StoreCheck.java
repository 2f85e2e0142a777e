package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;

/** What lots tell of themselves, whatever takes of them, and what follows for batches. */
public final class StoreCheck {
  private StoreCheck() {}

  /** Every code that it can give. */
  static List<Code> codes() {
    return List.of(
        StatesOfLots.DAYS,
        StatesOfLots.NAME,
        WithoutSupplier.CODE,
        HeldLater.CODE,
        PackOff.CODE,
        StoreBooks.OVERDRAWN,
        StoreBooks.COUNT);
  }

  /**
   * Looks at all lots.
   *
   * @param called the codes of recipes and premixes, and the names of profiles
   */
  public static void look(
      FeedTables tables, Collection<String> called, LocalDate day, Consumer<Finding> out) {
    new StatesOfLots(tables, called, day).look(out);
    WithoutSupplier.look(tables, out);
    PackOff.look(tables, day, out);
    new HeldLater(tables, day).look(out);
  }
}
