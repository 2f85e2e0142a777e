package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState;
import dev.pellucid.engine.data.LotState.State;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A lot that was not passed for this batch on its day: nobody had looked yet, it was on hold or had
 * gone back, it is for other feeds, or more of it goes in than it is passed for. What had failed is
 * told by itself.
 */
final class LotNotPassed implements RecordRule {
  static final Code CODE = new Code("lot-not-passed");

  /** As in the store, so much is rounding. */
  private static final double ROUNDED = 0.005;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    GoesInto into = batch.goesInto();
    Set<String> seen = new HashSet<>();
    for (Used used : batch.used()) {
      for (Lot lot : batch.lots(used.entry())) {
        if (seen.add(lot.number())) {
          look(batch, lot, used.entry(), into).ifPresent(out);
        }
      }
      batch
          .batch(used.entry())
          .flatMap(its -> inside(batch, its, used.entry(), into))
          .ifPresent(out);
    }
  }

  private static Optional<Finding> look(MadeBatch batch, Lot lot, Entry entry, GoesInto into) {
    Optional<LotState> state = lot.state(into.known());
    boolean toldElsewhere =
        lot.states().isEmpty()
            || lot.received().isAfter(into.known())
            || state.filter(it -> it.state() == State.FAILED).isPresent();
    if (toldElsewhere) {
      return Optional.empty();
    }
    Optional<String> why = Passing.hindrance(lot, into);
    return why.isPresent()
        ? Optional.of(finding(batch, lot, entry, state, why.get()))
        : more(batch, lot, entry, into);
  }

  private static Finding finding(
      MadeBatch batch, Lot lot, Entry entry, Optional<LotState> state, String why) {
    Finding finding =
        Finding.error(CODE, entry.lotPlace(), LotRule.of(lot, entry) + " " + why)
            .seeing("state written", state.map(LotState::place).orElse(lot.judged()));
    String because = state.map(LotState::because).orElse("");
    return (because.isEmpty() ? finding : finding.noting("because: " + because))
        .helping(
            batch.record().isMade()
                ? "hold the batch until someone who may has decided"
                : "take another lot, or have this one passed first");
  }

  private static Optional<Finding> more(MadeBatch batch, Lot lot, Entry entry, GoesInto into) {
    OptionalDouble most = Passing.most(lot, into);
    double kg =
        batch.used().stream()
            .filter(used -> batch.lots(used.entry()).contains(lot))
            .mapToDouble(Used::kg)
            .sum();
    if (most.isEmpty() || kg <= most.getAsDouble() * (1 + ROUNDED)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(
                CODE,
                entry.lotPlace(),
                LotRule.of(lot, entry)
                    + " makes up "
                    + Figures.plain(kg / into.feedKg(), Unit.PERCENT)
                    + " of the feed, it is passed for at most "
                    + Figures.plain(most.getAsDouble() / into.feedKg(), Unit.PERCENT))
            .seeing("state written", lot.judged())
            .helping(
                batch.record().isMade()
                    ? "hold the batch until someone who may has decided"
                    : "take the rest from another lot"));
  }

  /** What a premix or rework brings that is not for this feed. */
  private static Optional<Finding> inside(
      MadeBatch batch, BatchRecord source, Entry entry, GoesInto into) {
    Inside inside = batch.inside();
    boolean stopped =
        inside.of(source).stream()
            .anyMatch(held -> Inside.stopped(held.lot(), into.known()).isPresent());
    return stopped
        ? Optional.empty()
        : inside
            .hindrance(source, into)
            .map(
                why ->
                    Finding.error(CODE, entry.lotPlace(), "batch " + source.number() + " " + why)
                        .helping(
                            batch.record().isMade()
                                ? "hold the batch until someone who may has decided"
                                : "take another batch, or have the lot passed for it"));
  }
}
