package dev.pellucid.engine.records;

import dev.pellucid.engine.check.OutsidePractice;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trend.BatchYield;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What was bagged of a batch against what was planned; where that may be, what was bagged together
 * with its fines and samples against what it can have given by what was weighed.
 */
final class YieldOffPlan implements RecordRule {
  private static final Code CODE = new Code("yield-off-plan");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    if (batch.order().feed().isEmpty()
        || batch.record().bagged().isEmpty()
        || BatchSizeOff.factor(batch).isPresent()) {
      return;
    }
    Optional<BatchYield> made =
        batch
            .made()
            .flatMap(computed -> computed.feed())
            .flatMap(feed -> FloorFigures.yields(batch, feed));
    List<Finding> found = new ArrayList<>();
    bagged(batch, made, found::add);
    if (found.isEmpty() && RecordFigureOff.fines(batch.record()).isEmpty()) {
      made.ifPresent(one -> together(batch, one, found::add));
    }
    found.forEach(out);
  }

  private static void bagged(MadeBatch batch, Optional<BatchYield> made, Consumer<Finding> out) {
    double planned = batch.order().feed().orElseThrow().bagged() * batch.order().kg() / 100;
    double bagged = FloorFigures.bagged(batch.record());
    String advice =
        meant(batch, planned)
            .map(Meant::question)
            .orElse(
                bagged < planned
                    ? "look into machines and sieves for what is missing, and weigh the bags again"
                    : "weigh the bags again, and look at the moisture and at the weights of the"
                        + " mix");
    String own = bagged < batch.record().bagged().orElseThrow().thing() ? " of its own" : "";
    hold(
        batch,
        kg(bagged) + own + " were bagged of " + kg(planned) + " planned, which is",
        bagged / planned,
        found -> out.accept(Advice.in(basis(found, planned, made), advice)));
  }

  /** The plan is of the recipe; a sheet counts with the moisture of the lots that it names. */
  private static Finding basis(Finding found, double planned, Optional<BatchYield> made) {
    return made.filter(one -> !kg(one.expected()).equals(kg(planned)))
        .map(
            one ->
                found.noting(
                    kg(planned)
                        + " is by the recipe and its size; by the weights and lots of this record "
                        + kg(one.expected())
                        + " come into the bags"))
        .orElse(found);
  }

  /** The one figure of the bags that fits with its point moved. */
  private static Optional<String> meant(MadeBatch batch, double planned) {
    Optional<PracticeBound> bound = batch.tables().practice().bound(BoundOf.YIELD_OF_PLAN);
    Optional<Bags> told = batch.record().bags();
    if (bound.isEmpty() || told.isEmpty()) {
      return Optional.empty();
    }
    Bags bags = told.get();
    double others = FloorFigures.begunWith(batch.record());
    double low = bound.get().low() * planned + others;
    double high = bound.get().high() * planned + others;
    double whole = bags.full() * bags.of();
    Optional<String> full =
        TenTimes.moved(
                bags.full(), (low - bags.rest()) / bags.of(), (high - bags.rest()) / bags.of())
            .filter(count -> count == Math.rint(count))
            .map(count -> "full: " + Figures.plain(count));
    return full.or(
            () ->
                TenTimes.moved(
                        bags.of(),
                        (low - bags.rest()) / bags.full(),
                        (high - bags.rest()) / bags.full())
                    .map(kg -> "of: " + kg(kg)))
        .or(
            () ->
                TenTimes.moved(bags.rest(), low - whole, high - whole)
                    .map(kg -> "rest: " + kg(kg)));
  }

  private static void together(MadeBatch batch, BatchYield made, Consumer<Finding> out) {
    BatchRecord record = batch.record();
    double all = made.bagged() + made.setAside();
    if (made.setAside() == 0 || all <= made.finished()) {
      return;
    }
    List<String> parts = new ArrayList<>(List.of(kg(made.bagged()) + " bagged"));
    record.fines().ifPresent(fines -> parts.add(kg(fines.kg()) + " of fines"));
    double samples = record.samples().stream().mapToDouble(it -> it.kg()).sum();
    if (samples > 0) {
      parts.add(kg(samples) + " of samples");
    }
    hold(
        batch,
        Choices.all(parts)
            + " are "
            + kg(all)
            + " of "
            + kg(made.finished())
            + " that the batch can have given, which is",
        all / made.finished(),
        found ->
            out.accept(
                Advice.in(
                    record.fines().map(it -> found.seeing("the fines", it.place())).orElse(found),
                    "weigh bags, fines and samples again: together they cannot be more than was"
                        + " made")));
  }

  private static void hold(MadeBatch batch, String what, double share, Consumer<Finding> out) {
    new OutsidePractice(CODE, batch.tables().practice(), out)
        .hold(
            BoundOf.YIELD_OF_PLAN,
            batch.record().bagged().orElseThrow().place(),
            what,
            share,
            share,
            part -> Figures.plain(part, Unit.PERCENT));
  }

  private static String kg(double kg) {
    return Figures.plain(kg, Unit.KG);
  }
}
