package dev.pellucid.engine.records;

import dev.pellucid.engine.check.OutsidePractice;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.util.function.Consumer;

/** What was bagged against what was planned. */
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
    double planned = batch.order().feed().get().bagged() * batch.order().kg() / 100;
    double bagged = batch.record().bagged().get().thing();
    String advice =
        bagged < planned
            ? "look into machines and sieves for what is missing, and weigh the bags again"
            : "weigh the bags again, and look at the moisture and at the weights of the mix";
    new OutsidePractice(
            CODE, batch.tables().practice(), found -> out.accept(Advice.in(found, advice)))
        .hold(
            BoundOf.YIELD_OF_PLAN,
            batch.record().bagged().get().place(),
            Figures.plain(bagged, Unit.KG)
                + " were bagged of "
                + Figures.plain(planned, Unit.KG)
                + " planned, which is",
            bagged / planned,
            bagged / planned,
            share -> Figures.plain(share, Unit.PERCENT));
  }
}
