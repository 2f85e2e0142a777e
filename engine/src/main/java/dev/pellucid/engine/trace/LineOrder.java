package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.records.ByLetters;
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
import java.util.stream.Stream;

/**
 * Which batch was made after which on a line. What {@code after} tells holds, if it can be so.
 * Where a record does not tell it, its batch may have come after any batch of the same plant that
 * no record follows, of the same day or of an earlier one, back to the last day on which something
 * was made that took up what was left.
 *
 * <p>Only a feed that was made takes up what was left on the line. A batch that is overdue may
 * never have been made, and a premix may have been mixed elsewhere: both may come next, and what
 * was left may go past them. A record that tells what came before it took up that, and nothing
 * else.
 */
final class LineOrder {
  private final Plants mill;
  private final LocalDate today;
  private final Map<String, Page> pages = new HashMap<>();
  private final Map<String, List<Page>> next = new HashMap<>();
  private final Map<String, Turn> turns = new HashMap<>();
  private final Map<String, NavigableMap<LocalDate, Turn>> plants = new HashMap<>();
  private final Set<String> unknown = new HashSet<>();
  private final Set<String> followed = new HashSet<>();

  /** What was made at one plant on one day, or is to be. */
  static final class Turn {
    private final int id;
    private final String plant;
    private final LocalDate day;
    private final List<Page> last = new ArrayList<>();
    private final List<Page> first = new ArrayList<>();
    private boolean takesUp;

    private Turn(int id, String plant, LocalDate day) {
      this.id = id;
      this.plant = plant;
      this.day = day;
    }

    /** No two have the same. */
    int id() {
      return id;
    }

    /** Batches that no record follows: any may be the last one, or come before another. */
    List<Page> last() {
      return last;
    }

    /** Batches of which no record tells what came before. */
    List<Page> first() {
      return first;
    }
  }

  /**
   * @param today a batch that is planned for this day or later is made in its turn; one that was
   *     planned for an earlier day may have been made, or not
   */
  LineOrder(Collection<Page> all, Plants mill, LocalDate today) {
    this.mill = mill;
    this.today = today;
    Map<String, Optional<String>> byCode = new HashMap<>();
    for (Page page : all) {
      pages.put(page.key(), page);
      byCode.computeIfAbsent(page.record().code(), mill::plant);
    }
    byCode.forEach(
        (code, plant) -> {
          if (plant.isEmpty()) {
            unknown.add(code);
          }
        });
    for (Page page : all) {
      before(page)
          .ifPresent(before -> next.computeIfAbsent(before, none -> new ArrayList<>()).add(page));
      if (isMadeFeed(page)) {
        told(page).ifPresent(followed::add);
      }
    }
    for (Page page : all) {
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
            .computeIfAbsent(page.day(), day -> new Turn(turns.size(), plant, day));
    turns.put(page.key(), turn);
    if (!followed.contains(page.key())) {
      turn.last.add(page);
    }
    if (told(page).isEmpty()) {
      turn.first.add(page);
      turn.takesUp |= isMadeFeed(page) || isFeedToBeMade(page);
    }
  }

  private boolean isMadeFeed(Page page) {
    return !page.record().isPlanned() && mill.isFeed(page.record().code());
  }

  private boolean isFeedToBeMade(Page page) {
    return !page.day().isBefore(today) && mill.isFeed(page.record().code());
  }

  /** The batch that a record tells to have come before, by its key. */
  static Optional<String> before(Page page) {
    return page.record().after().map(Located::thing).map(ByLetters::number);
  }

  /**
   * The same, where it can be so: of another batch, not of a later day, and of one that was made
   * where the batch itself was made.
   */
  private Optional<String> told(Page page) {
    return before(page)
        .flatMap(key -> Optional.ofNullable(pages.get(key)))
        .filter(one -> !one.key().equals(page.key()) && !one.day().isAfter(page.day()))
        .filter(one -> page.record().isPlanned() || !one.record().isPlanned())
        .map(Page::key);
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
        : around(turn, plant(turn).tailMap(turn.day, false));
  }

  /** The turns from which a batch may have come, where no record tells after which batch. */
  List<Turn> mayBeAfter(Page page) {
    Turn turn = turn(page);
    return told(page).isPresent()
        ? List.of()
        : around(turn, plant(turn).headMap(turn.day, false).descendingMap());
  }

  /** A turn, and those beside it up to the first one that took up what was left. */
  private static List<Turn> around(Turn turn, Map<LocalDate, Turn> beside) {
    List<Turn> around = new ArrayList<>(List.of(turn));
    for (Turn other : beside.values()) {
      around.add(other);
      if (other.takesUp) {
        break;
      }
    }
    return around;
  }

  /** Every batch that came right after one, or may have. */
  Stream<Page> comesNext(Page page) {
    return Stream.concat(
        next(page.key()).stream(),
        mayBeBefore(page).stream()
            .flatMap(turn -> turn.first.stream())
            .filter(one -> isPossible(page, one)));
  }

  /** Every batch that came right before one, or may have. */
  Stream<Page> comesAfter(Page page) {
    return Stream.concat(
        before(page).map(pages::get).stream(),
        mayBeAfter(page).stream()
            .flatMap(turn -> turn.last.stream())
            .filter(one -> isPossible(one, page)));
  }

  /** Whether one batch can have come right before another, as far as it is told. */
  boolean isPossible(Page before, Page page) {
    return !before.key().equals(page.key()) && !told(before).equals(Optional.of(page.key()));
  }

  private Turn turn(Page page) {
    return Optional.ofNullable(turns.get(page.key())).orElseThrow();
  }

  private NavigableMap<LocalDate, Turn> plant(Turn turn) {
    return Optional.ofNullable(plants.get(turn.plant)).orElseThrow();
  }

  /** Whether a day is still to come. */
  boolean isToCome(LocalDate day) {
    return day.isAfter(today);
  }

  /** Whether nobody knows where a batch was made. */
  boolean isPlantUnknown(Page page) {
    return unknown.contains(page.record().code());
  }
}
