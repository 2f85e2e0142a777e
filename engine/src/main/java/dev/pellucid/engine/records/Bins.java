package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which lots can be in what is taken from a bin that is filled up on top of what is there. */
final class Bins {
  private static final Comparator<Lot> OLDEST =
      Comparator.comparing(Lot::received).thenComparing(Lot::number);

  private final FeedTables tables;

  Bins(FeedTables tables) {
    this.tables = tables;
  }

  /** Every lot that came into a bin since it was last empty, the oldest first. */
  List<Lot> possible(String name, LocalDate day) {
    Bin bin = tables.bins().get(name);
    List<Lot> possible = new ArrayList<>();
    for (Lot lot : tables.lots().values()) {
      boolean its = bin != null && lot.bin().filter(name::equals).isPresent();
      if (its && bin.mayHold(lot.received(), day)) {
        possible.add(lot);
      }
    }
    possible.sort(OLDEST);
    return possible;
  }

  /** The lots that a line of a record may be of: the one that it names, or those of its bin. */
  List<Lot> lots(BatchRecord.Entry entry, LocalDate day) {
    Lot lot = tables.lots().get(entry.lot());
    if (lot != null) {
      return List.of(lot);
    }
    return isFromBin(entry) ? possible(entry.bin(), day) : List.of();
  }

  /** Whether it tells a bin, and no lot. */
  static boolean isFromBin(BatchRecord.Entry entry) {
    return entry.written().isBlank() && !entry.bin().isEmpty();
  }

  /** Whether a lot is still where it was put, and not gone from a bin that was emptied. */
  boolean isThere(Lot lot, LocalDate day) {
    Optional<Bin> bin = lot.bin().flatMap(name -> Optional.ofNullable(tables.bins().get(name)));
    return bin.isEmpty() || bin.get().mayHold(lot.received(), day);
  }
}
