package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Which batch was made after which on a line. What {@code after} tells holds. Where a record does
 * not tell it, its batch may have come after any batch of the same plant that no record follows, of
 * the same day or of the day before on which anything was made there: what is left on a line is
 * taken up by the next batch, so that no older one can be meant.
 */
final class LineOrder {
  private final Map<String, List<Page>> next = new HashMap<>();
  private final Map<String, Turn> turns = new HashMap<>();
  private final Map<String, NavigableMap<LocalDate, Turn>> plants = new HashMap<>();
  private final Set<String> unknown = new HashSet<>();
  private final Set<String> followed = new HashSet<>();
  private int made;

  /**
   * What was made at one plant on one day.
   *
   * @param id no two have the same
   * @param last batches that no record follows: any may be the last one, or come before another
   * @param first batches of which no record tells what came before
   */
  record Turn(int id, String plant, LocalDate day, List<Page> last, List<Page> first) {}

  /**
   * @param plants the plant of a recipe or premix by its code; absent where nobody knows it
   */
  LineOrder(Collection<Page> pages, Function<String, Optional<String>> plants) {
    Map<String, Optional<String>> byCode = new HashMap<>();
    for (Page page : pages) {
      byCode.computeIfAbsent(page.record().code(), plants);
    }
    byCode.forEach(
        (code, plant) -> {
          if (plant.isEmpty()) {
            unknown.add(code);
          }
        });
    for (Page page : pages) {
      before(page)
          .ifPresent(
              before -> {
                followed.add(before);
                next.computeIfAbsent(before, none -> new ArrayList<>()).add(page);
              });
    }
    for (Page page : pages) {
      // While one plant is not known, every batch may have been made on the line of any other.
      String plant = unknown.isEmpty() ? plant(byCode, page) : "";
      put(page, plant);
    }
  }

  private static String plant(Map<String, Optional<String>> byCode, Page page) {
    return byCode.getOrDefault(page.record().code(), Optional.empty()).orElse("");
  }

  private void put(Page page, String plant) {
    Turn turn =
        plants
            .computeIfAbsent(plant, none -> new TreeMap<>())
            .computeIfAbsent(page.day(), day -> turn(plant, day));
    turns.put(page.key(), turn);
    if (!followed.contains(page.key())) {
      turn.last().add(page);
    }
    if (page.record().after().isEmpty()) {
      turn.first().add(page);
    }
  }

  private Turn turn(String plant, LocalDate day) {
    made++;
    return new Turn(made, plant, day, new ArrayList<>(), new ArrayList<>());
  }

  /** The batch that a record tells to have come before, by its key. */
  static Optional<String> before(Page page) {
    return before(page.record());
  }

  private static Optional<String> before(BatchRecord record) {
    return record.after().map(Located::thing).map(Ledger::key);
  }

  /** The batches of which a record tells that they came right after another. */
  List<Page> next(String key) {
    return next.getOrDefault(key, List.of());
  }

  /** The turns of which the first batches may have come right after one that no record follows. */
  List<Turn> mayBeBefore(Page page) {
    Turn turn = turn(page);
    return followed.contains(page.key())
        ? List.of()
        : around(turn, plants(turn).higherEntry(turn.day()));
  }

  /** The turns from which a batch may have come, where no record tells after which batch. */
  List<Turn> mayBeAfter(Page page) {
    Turn turn = turn(page);
    return page.record().after().isPresent()
        ? List.of()
        : around(turn, plants(turn).lowerEntry(turn.day()));
  }

  /** Whether one batch can have come right before another, as far as it is told. */
  static boolean isPossible(Page before, Page page) {
    return !before.key().equals(page.key()) && !before(before).equals(Optional.of(page.key()));
  }

  private Turn turn(Page page) {
    return Optional.ofNullable(turns.get(page.key())).orElseThrow();
  }

  private NavigableMap<LocalDate, Turn> plants(Turn turn) {
    return Optional.ofNullable(plants.get(turn.plant())).orElseThrow();
  }

  private static List<Turn> around(Turn turn, Map.@Nullable Entry<LocalDate, Turn> other) {
    return other == null ? List.of(turn) : List.of(turn, other.getValue());
  }

  /** Whether nobody knows where a batch was made. */
  boolean isPlantUnknown(Page page) {
    return unknown.contains(page.record().code());
  }
}
