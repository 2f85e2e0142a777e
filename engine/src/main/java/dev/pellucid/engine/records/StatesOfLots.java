package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves.Moved;
import dev.pellucid.engine.data.LotState;
import dev.pellucid.engine.data.LotState.State;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** What was decided of lots, and when: days that cannot be, and names of nothing. */
final class StatesOfLots {
  static final Code DAYS = new Code("lot-state-days");
  static final Code NAME = new Code("lot-passed-for-unknown");

  private final FeedTables tables;
  private final Collection<String> names;
  private final LocalDate day;

  /**
   * @param called the codes of recipes and premixes, and the names of profiles
   */
  StatesOfLots(FeedTables tables, Collection<String> called, LocalDate day) {
    this.tables = tables;
    this.names = new TreeSet<>(called);
    tables
        .species()
        .values()
        .forEach(
            species -> {
              names.add(species.name());
              names.addAll(species.groups());
            });
    this.day = day;
  }

  void look(Consumer<Finding> out) {
    for (Lot lot : tables.lots().values()) {
      List<LotState> written = new ArrayList<>(lot.states());
      written.sort(Comparator.comparing(state -> state.place().start()));
      for (int i = 0; i < written.size(); i++) {
        LotState state = written.get(i);
        days(lot, state, written.subList(0, i)).ifPresent(out);
        unknownNames(state).forEach(name -> out.accept(unknown(name)));
      }
      moves(lot).forEach(move -> moved(lot, move).ifPresent(out));
    }
  }

  /** The first that is wrong with a day; a slip of one day is one finding. */
  private Optional<Finding> days(Lot lot, LotState state, List<LotState> above) {
    if (state.day().isBefore(lot.received())) {
      return Optional.of(
          Finding.error(
                  DAYS,
                  state.place(),
                  "lot "
                      + lot.number()
                      + " came on "
                      + lot.received()
                      + ", and "
                      + word(state)
                      + " is before that")
              .seeing("lot written", lot.declared())
              .helping("fix the day that is wrong"));
    }
    if (state.day().isAfter(day)) {
      return Optional.of(future(state.place(), word(state) + " is in the future"));
    }
    Optional<LotState> back = first(above, one -> isBack(one) && !state.day().isBefore(one.day()));
    if (back.isPresent()) {
      return Optional.of(
          Finding.error(
                  DAYS,
                  state.place(),
                  "lot "
                      + lot.number()
                      + " went back on "
                      + back.get().day()
                      + ", and "
                      + word(state)
                      + " is after that")
              .seeing("the other", back.get().place())
              .helping("what came again is another delivery: give it a number of its own"));
    }
    Optional<LotState> same = first(above, one -> one.day().equals(state.day()));
    if (same.isPresent()) {
      return Optional.of(
          Finding.error(
                  DAYS, state.place(), "lot " + lot.number() + " has two states of " + state.day())
              .seeing("the other", same.get().place())
              .helping("keep the one that held at the end of that day"));
    }
    return first(above, one -> one.day().isAfter(state.day()))
        .map(
            later ->
                Finding.warning(
                        DAYS,
                        state.place(),
                        word(state) + " stands below what was decided on " + later.day())
                    .seeing("the other", later.place())
                    .helping("write the states in the order of their days, or fix the day"));
  }

  private static boolean isBack(LotState state) {
    return state.state() == State.RETURNED;
  }

  private static Optional<LotState> first(List<LotState> states, Predicate<LotState> that) {
    return states.stream().filter(that).findFirst();
  }

  /** {@code on hold of 2026-11-20}. */
  private static String word(LotState state) {
    String word =
        switch (state.state()) {
          case WAITING -> "waiting";
          case PASSED -> "passed";
          case PASSED_FOR -> "passed-for";
          case ON_HOLD -> "on-hold";
          case FAILED -> "failed";
          case RETURNED -> "returned";
        };
    return word + " of " + state.day();
  }

  private static Finding future(Span place, String sentence) {
    return Finding.warning(DAYS, place, sentence)
        .helping("look for a slip in the year or the month; until then it does not count");
  }

  private static List<Located<String>> names(LotState state) {
    List<Located<String>> names = new ArrayList<>(state.onlyFor());
    names.addAll(state.notFor());
    return names.stream().distinct().toList();
  }

  private List<Located<String>> unknownNames(LotState state) {
    return names(state).stream().filter(name -> !names.contains(name.thing())).toList();
  }

  private Finding unknown(Located<String> name) {
    List<String> alike = NearNames.of(name.thing(), names);
    List<String> near = alike.isEmpty() ? NearNames.holding(name.thing(), names) : alike;
    return Finding.error(
            NAME,
            name.place(),
            name.thing() + " is no recipe, premix, species, group of species or profile here")
        .helping(
            Meant.question(near)
                .orElse("write the code of a recipe, or the name of a species or profile"));
  }

  private static List<Moved> moves(Lot lot) {
    List<Moved> moves = new ArrayList<>(lot.moves().returned());
    moves.addAll(lot.moves().disposed());
    moves.addAll(lot.moves().corrections());
    moves.addAll(lot.moves().counted());
    return moves;
  }

  private Optional<Finding> moved(Lot lot, Moved move) {
    LocalDate when = move.signed().day();
    if (when.isBefore(lot.received())) {
      return Optional.of(
          Finding.error(
                  DAYS,
                  move.signed().place(),
                  "lot " + lot.number() + " came on " + lot.received() + ", and this is of " + when)
              .seeing("lot written", lot.declared())
              .helping("fix the day that is wrong"));
    }
    return when.isAfter(day)
        ? Optional.of(future(move.signed().place(), when + " is in the future"))
        : Optional.empty();
  }
}
