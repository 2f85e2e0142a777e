package dev.pellucid.engine.records;

import dev.pellucid.engine.check.Fixing;
import dev.pellucid.engine.check.Floor;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The feed of what was weighed from the lots that were named breaks a limit of its recipe. The
 * rules that judge recipes judge it; here their findings are told of the batch. Of a batch that was
 * rejected nothing is said, since nobody will feed it.
 */
final class MadeOutsideLimits implements RecordRule {
  private static final Code CODE = new Code("made-outside-limits");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    Optional<ComputedFeed> feed = batch.made().flatMap(made -> made.feed());
    if (feed.isEmpty() || batch.record().isRejected()) {
      return;
    }
    RuleContext inspection =
        new RuleContext(
            feed.get().recipe(),
            batch.tables(),
            feed.get().balances(),
            feed,
            batch.judgement(),
            Floor.none(),
            batch.day(),
            Fixing.none());
    Rules.ofLimits(inspection).forEach(said -> out.accept(told(batch, said.finding())));
  }

  private static Finding told(MadeBatch batch, Finding found) {
    boolean made = batch.record().isMade();
    List<String> path = new ArrayList<>(List.of(batch.record().number()));
    path.addAll(found.about().path());
    List<String> notes = new ArrayList<>(found.notes());
    notes.addAll(rescaled(batch));
    boolean placed = found.span().file().equals(batch.record().declared().file());
    Finding there =
        placed ? found : found.labelled("").seeing("most comes from here", found.span());
    return new Finding(
        CODE,
        batch.record().isHeld() ? Severity.WARNING : found.severity(),
        (made ? "as made, " : "with these lots, ") + found.headline(),
        placed ? found.span() : batch.record().declared(),
        there.label(),
        there.related(),
        notes,
        helps(batch),
        List.of(),
        new About(found.about().subject(), found.about().side(), path));
  }

  private static List<String> helps(MadeBatch batch) {
    if (batch.record().isHeld()) {
      return List.of("the batch is held: decide what becomes of it");
    }
    return batch.record().isMade()
        ? List.of(
            "hold the batch: a supervisor decides whether it is reworked, fed elsewhere or rejected")
        : List.of(
            "take other lots, or change the recipe for these",
            "mvn pellucid:rebalance -Dpellucid.batch="
                + batch.record().number()
                + " finds the smallest change of this batch alone");
  }

  private static List<String> rescaled(MadeBatch batch) {
    List<String> words = new ArrayList<>();
    for (MadeBatch.Used used : batch.used()) {
      Optional<Lot> lot = batch.lot(used.entry());
      Optional.ofNullable(batch.tables().ingredients().get(used.ask().material().name()))
          .filter(library -> lot.filter(it -> it.ingredient().equals(library.name())).isPresent())
          .map(library -> LotContents.of(library, lot.get(), batch.tables().nutrients()).words())
          .filter(told -> !told.isEmpty())
          .map(told -> "lot " + lot.get().number() + ": " + told)
          .filter(told -> !words.contains(told))
          .ifPresent(words::add);
    }
    return words;
  }
}
