package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.trace.Trace.Reason;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One batch record as a ledger has it: what the batch took, and what it may have taken.
 *
 * @param key its number
 * @param taken what it surely took: weighed in, put into it by what another record tells, or in a
 *     part bag that it filled up
 * @param drawn what came from bins, or was run through the line: of more than one lot, perhaps
 * @param open lines that may be of any lot of their kind
 * @param made kg of its own that others can be made from: what is in the bags without another's
 *     part bag, and the fines; absent where not all of it is told
 */
record Page(
    String key,
    BatchRecord record,
    List<Taken> taken,
    List<Drawn> drawn,
    List<Open> open,
    OptionalDouble made) {
  Page {
    taken = List.copyOf(taken);
    drawn = List.copyOf(drawn);
    open = List.copyOf(open);
  }

  /**
   * What a batch takes of a number.
   *
   * @param key the number
   * @param line empty where it came in with none
   * @param bin that it came from, where that is told
   */
  record Taken(String key, String line, String bin, Recall.Kind kind, Kilograms kg) {
    /** Whether it is only in the bags, and was not in the mixer. */
    boolean isInBagsOnly() {
      return kind == Recall.Kind.PART_BAG;
    }
  }

  /**
   * What is of one of a few lots, or of some of them.
   *
   * @param day on which it was drawn, which for a flush may be earlier than the batch
   * @param bins keys of the bins that it may come from
   * @param named the key of the lot that the record names; empty for none
   * @param as how it came: weighed from a bin, with a flush that was put into the batch, or left
   *     behind by the flush that was run through before the batch
   */
  record Drawn(
      String line,
      LocalDate day,
      List<String> bins,
      String named,
      Recall.Kind as,
      OptionalDouble kg) {
    Drawn {
      bins = List.copyOf(bins);
    }

    /** Whether it was only run through the line before the batch. */
    boolean flush() {
      return as == Recall.Kind.NEXT_ON_LINE;
    }

    Reason reason(String lot) {
      if (flush()) {
        return Reason.FLUSHED;
      }
      return lot.equals(named) ? Reason.NAMED_IN_BIN : Reason.FROM_BIN;
    }
  }

  /**
   * A line that may be of any lot of its kind.
   *
   * @param kind an ingredient, or the code of a premix or recipe
   * @param names the number that is named there, where one is and it cannot be right; or the bin
   */
  record Open(String kind, String line, Reason reason, String names, OptionalDouble kg) {
    /** Whether it was only run through the line before the batch. */
    boolean flush() {
      return reason == Reason.FLUSHED;
    }
  }

  String number() {
    return record.number();
  }

  LocalDate day() {
    return record.day();
  }
}
