package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Ingredient.OnBag;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One delivery of an ingredient, as {@code lots/} tells it.
 *
 * @param number as it stands on the sack; unique in the folder, capitals or not
 * @param bestBefore its last good day; absent for what does not age
 * @param kg what was received
 * @param states what was found and decided of it, in the order of days; none where nobody has
 *     looked yet
 * @param supplier who sold it, where that is told
 * @param supplierLot the number that the supplier has for it, where that is told
 * @param deliveryNote the number of the paper that it came with, where that is told
 * @param bin what it was put into, with others
 * @param remark what was seen
 * @param measured contents of this lot, as fed
 * @param bag whether it comes of genetically modified plants
 * @param declared where the number stands
 * @param weighed where the quantity stands, or the number
 * @param aged where the last good day stands, or the number
 * @param judged where the inspection stands, or the number
 */
public record Lot(
    String number,
    String ingredient,
    LocalDate received,
    Optional<LocalDate> bestBefore,
    double kg,
    List<LotState> states,
    Optional<String> supplier,
    Optional<String> supplierLot,
    Optional<String> deliveryNote,
    Optional<String> bin,
    LotMoves moves,
    String remark,
    List<ContentBlock> measured,
    OnBag bag,
    Span declared,
    Span weighed,
    Span aged,
    Span judged) {
  public Lot {
    states = List.copyOf(states);
    measured = List.copyOf(measured);
    if (kg <= 0) {
      throw new IllegalArgumentException("an empty lot: " + number);
    }
  }

  /** How it stands on a day; empty where nobody has looked by then. */
  public Optional<LotState> state(LocalDate day) {
    LotState last = null;
    for (LotState one : states) {
      if (!one.day().isAfter(day)) {
        last = one;
      }
    }
    return Optional.ofNullable(last);
  }

  /** The last that was found or decided of it. */
  public Optional<LotState> lastState() {
    return states.isEmpty() ? Optional.empty() : Optional.of(states.get(states.size() - 1));
  }

  /** Whether somebody has ever looked at it. */
  public boolean isLookedAt() {
    return states.stream().anyMatch(told -> told.state() != LotState.State.WAITING);
  }

  /** Whether it is in a state on a day. */
  public boolean is(LotState.State state, LocalDate day) {
    return state(day).filter(told -> told.state() == state).isPresent();
  }

  /** Whether it may go into some feed at all on a day. */
  public boolean isPassed(LocalDate day) {
    return is(LotState.State.PASSED, day) || is(LotState.State.PASSED_FOR, day);
  }

  /** Whether nobody has said anything of it by a day but that it is there. */
  public boolean isWaiting(LocalDate day) {
    return state(day).isEmpty() || is(LotState.State.WAITING, day);
  }

  /** What was measured of a nutrient. */
  public Optional<Content> measured(String nutrient) {
    return measured.stream()
        .filter(block -> block.species().isEmpty())
        .flatMap(block -> Optional.ofNullable(block.byNutrient().get(nutrient)).stream())
        .findFirst();
  }

  /** Whether it is past its last good day. */
  public boolean isExpired(LocalDate day) {
    return bestBefore.filter(day::isAfter).isPresent();
  }
}
