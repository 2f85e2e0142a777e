package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Signed;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.engine.records.HeldLater;
import dev.pellucid.engine.records.Inside;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Batches that are planned to be made next on a line, where the batch made last on it is stopped:
 * it is on hold, was rejected or called back, or holds a lot that must not be used. What that batch
 * left behind goes into the next one, so the line is to be clean first, and the record of the next
 * batch is to say so. Which batch may be next is told as in a recall, but that premixes are made on
 * a line of their own, unless a record names one.
 */
public final class LineToClean {
  public static final Code CODE = new Code("line-not-clean");

  private static final int NAMED = 3;

  private final FeedTables tables;
  private final LocalDate day;
  private final Plants mill;
  private final Inside inside;
  private final Map<String, List<Before>> before = new TreeMap<>();

  /**
   * Why what a batch left behind must go into no other.
   *
   * @param words as in {@code is on hold}
   * @param place where that is written
   */
  private record Stop(String words, Span place) {}

  /**
   * A batch that is stopped and that was, or may have been, the last one on the line.
   *
   * @param told whether the record of the next batch names it
   */
  private record Before(BatchRecord batch, Stop stop, boolean told) {
    String words() {
      return batch.number()
          + (told ? " was" : " may have been")
          + " made on it and "
          + stop.words();
    }
  }

  public LineToClean(FeedTables tables, LocalDate day, Plants mill) {
    this.tables = tables;
    this.day = day;
    this.mill = mill;
    this.inside = new Inside(tables, day);
    if (tables.batches().values().stream().anyMatch(BatchRecord::isPlanned)) {
      Map<String, Stop> stopped = new TreeMap<>();
      for (BatchRecord record : tables.batches().values()) {
        if (record.isMade()) {
          stop(record).ifPresent(stop -> stopped.put(record.number(), stop));
        }
      }
      if (!stopped.isEmpty()) {
        next(stopped);
      }
    }
  }

  private void next(Map<String, Stop> stopped) {
    Map<String, Page> pages = new TreeMap<>();
    for (BatchRecord record : tables.batches().values()) {
      pages.put(record.number(), page(record));
    }
    LineOrder order = new LineOrder(pages.values(), new Apart(mill), day);
    stopped.forEach(
        (number, stop) -> {
          Page last = Optional.ofNullable(pages.get(number)).orElseThrow();
          order.next(last.key()).forEach(page -> add(page, new Before(last.record(), stop, true)));
          order.mayBeBefore(last).stream()
              .flatMap(turn -> turn.first().stream())
              .filter(page -> order.isPossible(last, page) && isAlike(last, page))
              .filter(page -> !LineOrder.before(page).equals(Optional.of(last.key())))
              .forEach(page -> add(page, new Before(last.record(), stop, false)));
        });
  }

  private boolean isAlike(Page one, Page other) {
    return mill.isPremix(one.record().code()) == mill.isPremix(other.record().code());
  }

  /** What the order on a line needs of it. */
  private static Page page(BatchRecord record) {
    return new Page(
        ByLetters.number(record.number()),
        record,
        List.of(),
        List.of(),
        List.of(),
        OptionalDouble.empty());
  }

  private void add(Page page, Before last) {
    if (page.record().isPlanned()) {
      before.computeIfAbsent(page.number(), none -> new ArrayList<>()).add(last);
    }
  }

  /** A mill in which premixes have a line of their own, and follow each other on it. */
  private record Apart(Plants mill) implements Plants {
    @Override
    public Optional<String> plant(BatchRecord record) {
      boolean premix = isPremix(record.code());
      return mill.plant(record).map(plant -> premix ? "premixes of " + plant : plant);
    }

    @Override
    public boolean isPremix(String code) {
      return mill.isPremix(code);
    }

    @Override
    public boolean isFeed(String code) {
      return mill.isFeed(code) || isPremix(code);
    }
  }

  /** How a batch that was made stands, where what it left behind must go into no other. */
  private Optional<Stop> stop(BatchRecord record) {
    return stopped(record).or(() -> lot(record)).or(() -> source(record));
  }

  private static Optional<Stop> stopped(BatchRecord record) {
    return record
        .decidedOn(LocalDate.MAX)
        .filter(last -> Standing.isStopped(last.decision()))
        .map(last -> new Stop(words(last.decision()), last.place()));
  }

  private static String words(Decision decision) {
    return switch (decision) {
      case HELD, ON_HOLD -> "is on hold";
      case REJECTED -> "was rejected";
      case WITHDRAWN -> "was withdrawn";
      case RELEASED -> "was released";
    };
  }

  private Optional<Stop> lot(BatchRecord record) {
    return inside.of(record).stream()
        .filter(held -> held.way().isMixedIn())
        .flatMap(
            held ->
                Inside.stopped(held.lot(), day).stream()
                    .filter(state -> !Inside.isDecided(record, state.day()))
                    .map(
                        state ->
                            new Stop(
                                (held.way().isPerhaps() ? "may hold lot " : "holds lot ")
                                    + held.lot().number()
                                    + ", which"
                                    + HeldLater.words(state),
                                state.place())))
        .findFirst();
  }

  /** A premix, rework or fines in it that are stopped themselves. */
  private Optional<Stop> source(BatchRecord record) {
    return inside.batches(record).stream()
        .filter(through -> through.way().isMixedIn())
        .map(Inside.Through::batch)
        .filter(
            source ->
                HeldLater.since(source).filter(since -> Inside.isDecided(record, since)).isEmpty())
        .flatMap(
            source ->
                stopped(source)
                    .map(
                        stop ->
                            new Stop(
                                "holds " + source.number() + ", which " + stop.words(),
                                stop.place()))
                    .stream())
        .findFirst();
  }

  /** Once for each batch that is planned. */
  public void look(Consumer<Finding> out) {
    for (String number : before.keySet()) {
      BatchRecord record = Optional.ofNullable(tables.batches().get(number)).orElseThrow();
      List<Before> last = notCleanedAfter(record);
      if (!last.isEmpty()) {
        out.accept(finding(record, last));
      }
    }
  }

  /** Why the line is to be clean before a batch, as on its sheet; empty where it need not be. */
  public Optional<String> why(BatchRecord record) {
    List<Before> last = notCleanedAfter(record);
    return last.isEmpty() ? Optional.empty() : Optional.of(words(last));
  }

  /** The records that say so. */
  public List<String> files(BatchRecord record) {
    return notCleanedAfter(record).stream()
        .flatMap(last -> Stream.of(last.batch().declared(), last.stop().place()))
        .map(place -> place.file().path())
        .distinct()
        .toList();
  }

  private static String words(List<Before> last) {
    String first = last.stream().limit(NAMED).map(Before::words).collect(Collectors.joining("; "));
    int more = last.size() - NAMED;
    return more > 0 ? first + "; and " + more + " more are stopped" : first;
  }

  private List<Before> notCleanedAfter(BatchRecord record) {
    return before.getOrDefault(record.number(), List.of()).stream()
        .filter(last -> !record.isCleanedAfter(last.batch(), day))
        .toList();
  }

  private Finding finding(BatchRecord record, List<Before> last) {
    Span place = record.after().map(Located::place).orElse(record.declared());
    Finding finding =
        Finding.warning(
                CODE,
                place,
                "the line is to be clean before " + record.number() + ": " + words(last))
            .seeing("stopped", last.get(0).stop().place());
    Optional<Signed> cleaned = record.cleaned();
    if (cleaned.isPresent()) {
      return finding
          .seeing("cleaned", cleaned.get().place())
          .helping(
              cleaned.get().day().isAfter(day)
                  ? "cleaned is of "
                      + cleaned.get().day()
                      + ", which is still to come: it counts from that day on"
                  : "cleaned is of "
                      + cleaned.get().day()
                      + ", before that batch was made: clean the line again, and write that day");
    }
    finding =
        finding.helping(
            "clean the line before the batch, and write cleaned: {day: "
                + record.day()
                + ", by: ____, how: ____}, with the day on which it was cleaned");
    if (!last.stream().allMatch(Before::told)) {
      finding =
          finding.helping(
              "or, where another batch comes between the two, name it in "
                  + record.number()
                  + " behind after");
    }
    return record.flushed().isPresent()
        ? finding.helping(
            "a flush of a line that is not clean goes into no feed: keep it apart and marked, and"
                + " write where in flushed: to")
        : finding;
  }
}
