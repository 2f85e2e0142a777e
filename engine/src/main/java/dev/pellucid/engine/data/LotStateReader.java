package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.LotState.State;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What was found and decided of a lot: one word, or one entry for each day. */
final class LotStateReader {
  private static final Set<State> WITH_REASON = Set.of(State.ON_HOLD, State.FAILED, State.RETURNED);

  private final FigureReader figures;
  private final Remarks remarks;

  LotStateReader(FigureReader figures, Remarks remarks) {
    this.figures = figures;
    this.remarks = remarks;
  }

  /** Where the last word of it stands; empty where none does. */
  static Optional<Span> place(Fields lot) {
    if (lot.has(LotsVocabulary.STATES)) {
      return Optional.of(lot.placeOf(LotsVocabulary.STATES));
    }
    return lot.has(LotsVocabulary.INSPECTION)
        ? Optional.of(lot.placeOf(LotsVocabulary.INSPECTION))
        : Optional.empty();
  }

  /**
   * In the order of days. Empty where one could not be read: a lot of which nobody can say whether
   * it may be used is not used.
   */
  Optional<List<LotState>> states(Fields lot, Optional<LocalDate> received) {
    if (!lot.has(LotsVocabulary.STATES)) {
      return word(lot, received);
    }
    if (lot.has(LotsVocabulary.INSPECTION)) {
      remarks.add(
          LotFindings.record(
              lot.placeOf(LotsVocabulary.INSPECTION),
              "the lot tells an inspection and states, and both say whether it may be used",
              "leave inspection out, and write what was found as the first of the states"));
      return Optional.empty();
    }
    List<Fields> written = lot.blocks(LotsVocabulary.STATES);
    List<LotState> states = new ArrayList<>();
    written.forEach(one -> state(one).ifPresent(states::add));
    states.sort(Comparator.comparing(LotState::day));
    return states.size() < written.size() ? Optional.empty() : Optional.of(states);
  }

  private Optional<List<LotState>> word(Fields lot, Optional<LocalDate> received) {
    if (!lot.has(LotsVocabulary.INSPECTION)) {
      return Optional.of(List.of());
    }
    Optional<Scalar> written = lot.text(LotsVocabulary.INSPECTION);
    if (written.isPresent() && isState(written.get())) {
      remarks.add(
          LotFindings.record(
              written.get().span(),
              written.get().text() + " is no inspection alone: who says so, since when, and why",
              "write states: with a line {day: "
                  + received.map(LocalDate::toString).orElse("2027-03-31")
                  + ", by: ..., state: "
                  + written.get().text()
                  + ", because: ...}"));
      return Optional.empty();
    }
    Optional<Scalar> word = lot.word(LotsVocabulary.INSPECTION, "an inspection");
    return word.isPresent() && received.isPresent()
        ? Optional.of(
            List.of(
                LotState.of(
                    Vocabulary.named(State.class, word.get().text()),
                    received.get(),
                    word.get().span())))
        : Optional.empty();
  }

  /** Whether a word is a state of a lot that needs more than a word. */
  private static boolean isState(Scalar word) {
    return Vocabulary.words(State.values()).contains(word.text())
        && !LotsVocabulary.INSPECTION.holds().words().contains(word.text());
  }

  private Optional<LotState> state(Fields block) {
    Optional<Signed> signed = new SignedReader(figures).of(block, SignedVocabulary.MAY_BECAUSE);
    Optional<State> state = block.oneOf(LotsVocabulary.STATE, "a state");
    OptionalDouble most = figures.share(block.text(LotsVocabulary.AT_MOST));
    if (signed.isEmpty()
        || state.isEmpty()
        || most.isPresent() != block.has(LotsVocabulary.AT_MOST)) {
      return Optional.empty();
    }
    LotState told =
        new LotState(
            state.get(),
            signed.get().day(),
            signed.get().by(),
            signed.get().because(),
            names(block, LotsVocabulary.ONLY_FOR),
            names(block, LotsVocabulary.NOT_FOR),
            most,
            block.placeOf(LotsVocabulary.STATE));
    return isWhole(told) ? Optional.of(told) : Optional.empty();
  }

  private boolean isWhole(LotState told) {
    String word = Vocabulary.word(told.state());
    boolean bounded =
        !told.onlyFor().isEmpty() || !told.notFor().isEmpty() || told.atMost().isPresent();
    if (WITH_REASON.contains(told.state()) && told.because().isEmpty()) {
      remarks.add(
          LotFindings.record(
              told.place(),
              "the state " + word + " has no reason",
              "write because: and what was seen or decided"));
      return false;
    }
    if (bounded != (told.state() == State.PASSED_FOR)) {
      remarks.add(
          LotFindings.record(
              told.place(),
              bounded
                  ? "the state " + word + " has bounds, and only passed-for can have them"
                  : "the state passed-for does not tell what the lot is passed for",
              bounded
                  ? "write state: passed-for, or leave the bounds out"
                  : "write only-for, not-for or at-most beside it, or state: passed"));
      return false;
    }
    return true;
  }

  private static List<Located<String>> names(Fields block, Key<ListOf<Text>> key) {
    List<Located<String>> names = new ArrayList<>();
    for (Scalar name : block.texts(key)) {
      names.add(new Located<>(name.text(), name.span()));
    }
    return names;
  }
}
