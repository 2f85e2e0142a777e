package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.records.ByLetters;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Two records of one plant that tell the same batch behind {@code after}: only one can have come
 * next on the line. At two plants both can be right, where a part of a batch was ground at the
 * other.
 */
public final class FollowedTwice {
  public static final Code CODE = new Code("followed-twice");

  private final FeedTables tables;
  private final Plants mill;

  /** What came before, and where the batch was made. */
  private record Place(String before, String plant) {}

  /** One behind the other. */
  private record Follower(BatchRecord record, Located<String> after) {}

  public FollowedTwice(FeedTables tables, Plants mill) {
    this.tables = tables;
    this.mill = mill;
  }

  /** Once for each batch but the first; those that were made come first, in the order of days. */
  public void look(Consumer<Finding> out) {
    Map<Place, Follower> first = new HashMap<>();
    List<BatchRecord> inOrder =
        tables.batches().values().stream()
            .filter(record -> record.after().isPresent())
            .sorted(
                Comparator.comparing(BatchRecord::isPlanned)
                    .thenComparing(BatchRecord::day)
                    .thenComparing(BatchRecord::number))
            .toList();
    for (BatchRecord record : inOrder) {
      Follower follower = new Follower(record, record.after().orElseThrow());
      place(follower)
          .map(place -> first.putIfAbsent(place, follower))
          .filter(earlier -> !record.closed())
          .ifPresent(earlier -> out.accept(finding(earlier, follower)));
    }
  }

  private Optional<Place> place(Follower one) {
    String before = ByLetters.number(one.after().thing());
    return mill.plant(one.record()).map(plant -> new Place(before, plant));
  }

  private static Finding finding(Follower first, Follower second) {
    return Finding.warning(
            CODE,
            second.after().place(),
            second.after().thing()
                + " is followed by two batches on its line, "
                + first.record().number()
                + " and "
                + second.record().number())
        .seeing("the other", first.after().place())
        .helping(
            "only one came next: write in one of the two which batch was made right before it");
  }
}
