package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.records.ByLetters;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Which batch was made after which on a line. What {@code after} tells of a batch that was made
 * holds, if it can be so: of two that name the same, of some that name each other in a circle, and
 * where a feed in between would be forgotten, none is believed more than the others. Where nothing
 * is told or believed, a batch may have come after any batch of the same plant that no record
 * follows, of the same day or of an earlier one, back to the last day on which something was made
 * that took up what was left. Whatever a record names it may have come after, too.
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
  private final Map<String, Optional<String>> plantOf = new HashMap<>();
  private final Map<String, List<Turn>> turns = new HashMap<>();
  private final Map<String, NavigableMap<LocalDate, Turn>> plants = new HashMap<>();
  private final Map<String, String> believed = new HashMap<>();
  private final Set<String> followed = new HashSet<>();
  private int made;

  /** What was made at one plant on one day, or is to be. */
  static final class Turn {
    private final int id;
    private final String plant;
    private final LocalDate day;
    private final List<Page> all = new ArrayList<>();
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
    for (Page page : all) {
      pages.put(page.key(), page);
      plantOf.put(page.key(), mill.plant(page.record()));
    }
    for (Page page : all) {
      before(page)
          .ifPresent(before -> next.computeIfAbsent(before, none -> new ArrayList<>()).add(page));
    }
    // While one plant is not known, every batch may have been made on the line of any other.
    boolean known = plantOf.values().stream().allMatch(Optional::isPresent);
    for (Page page : all) {
      plants(page, known).forEach(plant -> turn(page, plant));
    }
    believe();
    for (Page page : all) {
      turns(page).forEach(turn -> put(page, turn));
    }
  }

  /** That of its recipe, and that of the batch which its record tells to have come before. */
  private Set<String> plants(Page page, boolean known) {
    if (!known) {
      return Set.of("");
    }
    Set<String> plants = new LinkedHashSet<>(plant(page).stream().toList());
    before(page)
        .flatMap(key -> Optional.ofNullable(pages.get(key)))
        .flatMap(this::plant)
        .ifPresent(plants::add);
    return plants;
  }

  private Optional<String> plant(Page page) {
    return plantOf.getOrDefault(page.key(), Optional.empty());
  }

  private void turn(Page page, String plant) {
    Turn turn =
        plants
            .computeIfAbsent(plant, none -> new TreeMap<>())
            .computeIfAbsent(page.day(), day -> new Turn(made++, plant, day));
    turn.all.add(page);
    turns.computeIfAbsent(page.key(), none -> new ArrayList<>()).add(turn);
  }

  private void put(Page page, Turn turn) {
    if (!followed.contains(page.key())) {
      turn.last.add(page);
    }
    if (told(page).isEmpty()) {
      turn.first.add(page);
      turn.takesUp |= isMadeFeed(page) || isFeedToBeMade(page);
    }
  }

  /** Takes for true what records tell of the order, as long as it can be so. */
  private void believe() {
    Map<String, List<String>> claims = new HashMap<>();
    for (Page page : pages.values()) {
      canBe(page)
          .ifPresent(
              before -> {
                believed.put(page.key(), before);
                if (isMadeFeed(page)) {
                  claims.computeIfAbsent(before, none -> new ArrayList<>()).add(page.key());
                }
              });
    }
    // Of two feeds only one can have come right after another.
    claims.values().stream().filter(of -> of.size() > 1).forEach(believed.keySet()::removeAll);
    believed.keySet().removeAll(believed.keySet().stream().filter(this::isInCircle).toList());
    boolean doubted = true;
    while (doubted) {
      followed.clear();
      believed.forEach((key, before) -> followed(key).ifPresent(page -> followed.add(before)));
      doubted =
          believed.keySet().removeAll(believed.keySet().stream().filter(this::passesOver).toList());
    }
  }

  private Optional<Page> followed(String by) {
    return Optional.ofNullable(pages.get(by)).filter(this::isMadeFeed);
  }

  /**
   * The batch that is told to have come before, where it can be so: another one, of the same plant
   * and not of a later day, and both were made or are to be made. A plan that names one which was
   * made may be older than what was made since.
   */
  private Optional<String> canBe(Page page) {
    return before(page)
        .flatMap(key -> Optional.ofNullable(pages.get(key)))
        .filter(one -> !one.key().equals(page.key()) && !one.day().isAfter(page.day()))
        .filter(one -> plant(one).equals(plant(page)))
        .filter(one -> page.record().isPlanned() ? isToBeMade(one) : !one.record().isPlanned())
        .map(Page::key);
  }

  private boolean isToBeMade(Page page) {
    return page.record().isPlanned() && !page.day().isBefore(today);
  }

  private boolean isInCircle(String key) {
    Set<String> seen = new HashSet<>();
    Optional<String> at = Optional.of(key);
    while (at.isPresent() && seen.add(at.get())) {
      at = at.flatMap(one -> Optional.ofNullable(believed.get(one)));
      if (at.filter(key::equals).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** Whether a feed that nothing follows was made between the two, so that one may be forgotten. */
  private boolean passesOver(String key) {
    Page page = Optional.ofNullable(pages.get(key)).orElseThrow();
    Page before = Optional.ofNullable(pages.get(believed.get(key))).orElseThrow();
    return turns(page).stream()
        .filter(turn -> before.day().isBefore(turn.day))
        .flatMap(turn -> plant(turn).subMap(before.day(), false, turn.day, false).values().stream())
        .flatMap(turn -> turn.all.stream())
        .anyMatch(one -> isMadeFeed(one) && !followed.contains(one.key()));
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

  /** The same, where it is believed. */
  private Optional<String> told(Page page) {
    return Optional.ofNullable(believed.get(page.key()));
  }

  /** The batches of which a record tells that they came right after another. */
  List<Page> next(String key) {
    return next.getOrDefault(key, List.of());
  }

  /** The turns of which the first batches may have come right after one that no record follows. */
  List<Turn> mayBeBefore(Page page) {
    return followed.contains(page.key())
        ? List.of()
        : around(page, turn -> plant(turn).tailMap(turn.day, false));
  }

  /** The turns from which a batch may have come, where no record tells after which batch. */
  List<Turn> mayBeAfter(Page page) {
    return told(page).isPresent()
        ? List.of()
        : around(page, turn -> plant(turn).headMap(turn.day, false).descendingMap());
  }

  private List<Turn> around(Page page, Function<Turn, Map<LocalDate, Turn>> beside) {
    return turns(page).stream()
        .flatMap(turn -> around(turn, beside.apply(turn)).stream())
        .distinct()
        .toList();
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

  private List<Turn> turns(Page page) {
    return turns.getOrDefault(page.key(), List.of());
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
    return plant(page).isEmpty();
  }
}
