package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Whether a lot may go into something, by the last that was decided of it. */
final class Passing {
  private Passing() {}

  /** Why it may not, behind its number; empty where it may. */
  static Optional<String> hindrance(Lot lot, GoesInto into) {
    Optional<LotState> state = lot.state(into.known());
    return state.isEmpty()
        ? Optional.of("was not looked at by " + into.known())
        : hindrance(state.get(), into);
  }

  private static Optional<String> hindrance(LotState state, GoesInto into) {
    return switch (state.state()) {
      case WAITING -> Optional.of("waits for its inspection since " + state.day());
      case PASSED -> Optional.empty();
      case PASSED_FOR -> bounded(state, into);
      case ON_HOLD -> Optional.of("is on hold since " + state.day() + by(state));
      case FAILED -> Optional.of("failed its inspection on " + state.day() + by(state));
      case RETURNED -> Optional.of("went back to who sold it on " + state.day());
    };
  }

  /** Behind a day: {@code by the gate}. */
  private static String by(LotState state) {
    return state.by().isEmpty() ? "" : " by " + state.by();
  }

  private static Optional<String> bounded(LotState state, GoesInto into) {
    boolean named = names(state.onlyFor(), into);
    if (!state.onlyFor().isEmpty() && !named) {
      return Optional.of("is passed only for " + words(state.onlyFor()));
    }
    boolean excluded = names(state.notFor(), into);
    boolean mayReach = into.premix() && !state.notFor().isEmpty() && !named;
    return excluded || mayReach
        ? Optional.of(
            "is not for "
                + words(state.notFor())
                + (excluded ? "" : ", and " + into.code() + " may go into that"))
        : Optional.empty();
  }

  /**
   * Why it may not through what was made of it: that may be named in place of what it goes into.
   *
   * @param through the codes of what was made of it
   */
  static Optional<String> hindranceThrough(Lot lot, Set<String> through, GoesInto into) {
    Optional<LotState> state = lot.state(into.known());
    if (state.isEmpty() || state.get().state() != LotState.State.PASSED_FOR) {
      return Optional.empty();
    }
    List<Located<String>> only = state.get().onlyFor();
    boolean named =
        names(only, into) || only.stream().anyMatch(name -> through.contains(name.thing()));
    if (!only.isEmpty() && !named) {
      return Optional.of("is passed only for " + words(only));
    }
    return names(state.get().notFor(), into)
        ? Optional.of("is not for " + words(state.get().notFor()))
        : Optional.empty();
  }

  private static boolean names(List<Located<String>> names, GoesInto into) {
    return names.stream().anyMatch(name -> into.names().contains(name.thing()));
  }

  private static String words(List<Located<String>> names) {
    return String.join(", ", names.stream().map(Located::thing).toList());
  }

  /** The kg of it that may go into all of that; empty where nothing bounds them. */
  static OptionalDouble most(Lot lot, GoesInto into) {
    OptionalDouble share =
        lot.state(into.known()).map(LotState::atMost).orElse(OptionalDouble.empty());
    return share.isPresent()
        ? OptionalDouble.of(share.getAsDouble() * into.feedKg())
        : OptionalDouble.empty();
  }
}
