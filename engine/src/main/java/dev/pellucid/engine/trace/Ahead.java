package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves;
import dev.pellucid.engine.data.Since;
import dev.pellucid.engine.data.Since.Handed;
import dev.pellucid.engine.quantity.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What is written of a lot or a batch for days that are still to come, in words: it did not happen
 * yet, or its day is wrong, and so it takes nothing out of the store. A recall tells it, so that
 * what is to leave is stopped.
 */
final class Ahead {
  private final LocalDate day;

  Ahead(LocalDate day) {
    this.day = day;
  }

  List<String> of(Lot lot) {
    LotMoves moves = lot.moves();
    List<String> ahead = new ArrayList<>();
    moves.returned().forEach(one -> add(ahead, "to go back to its supplier", one));
    moves.disposed().forEach(one -> add(ahead, "to be disposed of", one));
    moves.corrections().forEach(one -> add(ahead, "corrected", one));
    moves.counted().forEach(one -> add(ahead, "counted", one));
    return ahead;
  }

  List<String> of(BatchRecord record) {
    Since since = record.since();
    List<String> ahead = new ArrayList<>();
    since.delivered().forEach(one -> add(ahead, "to be delivered" + party(" to ", one), one));
    since.returned().forEach(one -> add(ahead, "to come back" + party(" from ", one), one));
    since.disposed().forEach(one -> add(ahead, "to be disposed of", one));
    since.counted().forEach(one -> add(ahead, "counted", one));
    return ahead;
  }

  private static String party(String word, Handed one) {
    return one.party().isBlank() ? "" : word + one.party().strip();
  }

  private void add(List<String> ahead, String what, LotMoves.Moved one) {
    add(ahead, what, one.signed().day(), one.kg());
  }

  private void add(List<String> ahead, String what, Handed one) {
    add(ahead, what, one.signed().day(), one.kg());
  }

  private void add(List<String> ahead, String what, LocalDate on, double kg) {
    if (on.isAfter(day)) {
      ahead.add(what + " on " + on + ", " + Figures.plain(kg) + " kg");
    }
  }
}
