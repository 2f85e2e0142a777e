package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
import dev.pellucid.engine.data.Since.Decided;
import dev.pellucid.engine.trace.Recall.State;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How lots and batches stand, in a word. */
final class Standing {
  private Standing() {}

  /** The last that was found or decided of a lot up to a day. */
  static State of(Lot lot, LocalDate day) {
    return lot.state(day)
        .map(
            last ->
                new State(
                    word(last.state()),
                    Optional.of(last.day()),
                    last.by(),
                    last.because(),
                    isStopped(last.state())))
        .orElse(new State("not inspected", Optional.empty(), "", "", false));
  }

  private static boolean isStopped(LotState.State state) {
    return switch (state) {
      case ON_HOLD, FAILED, RETURNED -> true;
      case WAITING, PASSED, PASSED_FOR -> false;
    };
  }

  /** The last that was decided of a batch up to a day. */
  static State of(BatchRecord record, LocalDate day) {
    return record
        .decidedOn(day)
        .map(Standing::of)
        .orElse(new State(undecided(record), Optional.empty(), "", "", false));
  }

  /** What is found or decided of a lot for days that are still to come, in words. */
  static List<String> after(LocalDate day, Lot lot) {
    return lot.states().stream()
        .filter(one -> one.day().isAfter(day))
        .map(one -> word(one.state()) + " from " + one.day())
        .toList();
  }

  /** The same of a batch. */
  static List<String> after(LocalDate day, BatchRecord record) {
    List<String> after = new ArrayList<>();
    record
        .release()
        .filter(it -> it.day().filter(day::isBefore).isPresent())
        .ifPresent(it -> after.add(word(it.decision()) + " from " + it.day().orElseThrow()));
    for (Decided one : record.since().decisions()) {
      if (one.signed().day().isAfter(day)) {
        after.add(word(one.decision()) + " from " + one.signed().day());
      }
    }
    return after;
  }

  private static State of(Release release) {
    return new State(
        word(release.decision()),
        release.day(),
        release.by(),
        release.because(),
        isStopped(release.decision()));
  }

  private static String undecided(BatchRecord record) {
    return record.isMade() ? "open" : "planned";
  }

  /** Whether nothing of it may leave the store. */
  static boolean isStopped(Decision decision) {
    return switch (decision) {
      case HELD, REJECTED, ON_HOLD, WITHDRAWN -> true;
      case RELEASED -> false;
    };
  }

  /** A word as files have it. */
  static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
