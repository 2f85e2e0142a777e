package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What was found of a lot or decided about it, from a day on.
 *
 * @param by who said so; empty in the short form
 * @param because may be empty
 * @param onlyFor recipes, species, groups of species or profiles that it may go into; empty for all
 * @param notFor those that it may not go into
 * @param atMost the largest share of a feed that it may make up
 * @param place where the word stands
 */
public record LotState(
    State state,
    LocalDate day,
    String by,
    String because,
    List<Located<String>> onlyFor,
    List<Located<String>> notFor,
    OptionalDouble atMost,
    Span place) {
  public LotState {
    onlyFor = List.copyOf(onlyFor);
    notFor = List.copyOf(notFor);
  }

  /** A word alone, as {@code inspection} tells it. */
  static LotState of(State state, LocalDate day, Span place) {
    return new LotState(state, day, "", "", List.of(), List.of(), OptionalDouble.empty(), place);
  }

  /** How a lot stands. */
  public enum State {
    /** It came, and nobody has looked at it. */
    WAITING,
    PASSED,
    /** It may be used for some feeds, or up to a share. */
    PASSED_FOR,
    /** Nothing may be taken of it until someone has decided. */
    ON_HOLD,
    FAILED,
    /** It went back to who sold it. */
    RETURNED
  }
}
