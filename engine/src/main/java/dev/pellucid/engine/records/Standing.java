package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
import dev.pellucid.engine.data.Since.Decided;
import dev.pellucid.engine.records.Recall.State;
import java.util.Locale;
import java.util.Optional;

/** How lots and batches stand, in a word. */
final class Standing {
  private Standing() {}

  /** The last that was found or decided of a lot, on whatever day. */
  static State of(Lot lot) {
    return lot.lastState()
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

  /** The last that was decided of a batch. */
  static State of(BatchRecord record) {
    Optional<Decided> last =
        record.since().decisions().stream()
            .reduce(
                (one, other) -> other.signed().day().isBefore(one.signed().day()) ? one : other);
    return last.map(
            it ->
                new State(
                    word(it.decision()),
                    Optional.of(it.signed().day()),
                    it.signed().by(),
                    it.signed().because(),
                    isStopped(it.decision())))
        .or(() -> record.release().map(Standing::of))
        .orElse(new State(undecided(record), Optional.empty(), "", "", false));
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
