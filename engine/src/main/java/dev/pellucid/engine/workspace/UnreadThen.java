package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What of a record of today, and of the lots and batches that it names, cannot be understood by an
 * earlier state: a lot of an ingredient that had another name, a nutrient that was not known.
 */
final class UnreadThen {
  private final FeedTables today;
  private final FeedTables then;
  private final Set<String> seen = new HashSet<>();

  private UnreadThen(FeedTables today, FeedTables then) {
    this.today = today;
    this.then = then;
  }

  /** The first such thing, in words that stand behind a colon; empty where all is understood. */
  static Optional<String> of(BatchRecord record, FeedTables today, FeedTables then) {
    return new UnreadThen(today, then).of(record);
  }

  private Optional<String> of(BatchRecord record) {
    if (!seen.add(record.number())) {
      return Optional.empty();
    }
    BatchRecord read = then.batches().get(record.number());
    if (read == null) {
      return Optional.of("by what it was made from its record cannot be read");
    }
    for (Entry entry : record.entries()) {
      Optional<String> unread = lot(entry.lot());
      if (unread.isPresent()) {
        return unread;
      }
    }
    return Optional.empty();
  }

  private Optional<String> lot(String number) {
    Lot now = today.lots().get(number);
    BatchRecord made = today.batches().get(number);
    if (now == null) {
      return made == null ? Optional.empty() : of(made);
    }
    Lot read = then.lots().get(number);
    if (read == null) {
      return Optional.of(
          "lot "
              + number
              + " is of "
              + now.ingredient()
              + ", which what it was made from does not know by that name");
    }
    List<String> lost =
        measured(now).stream().filter(one -> read.measured(one).isEmpty()).sorted().toList();
    return lost.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "what lot "
                + number
                + " tells of "
                + String.join(", ", lost)
                + " cannot be read by what it was made from");
  }

  private static Set<String> measured(Lot lot) {
    Set<String> names = new HashSet<>();
    lot.measured().forEach(block -> names.addAll(block.byNutrient().keySet()));
    return names;
  }
}
