package dev.pellucid.engine.records;

import dev.pellucid.engine.check.OutsidePractice;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Sieved;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.quality.MixerTest;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Quality records of a batch against practice: how even the mix was (for a premix as the strict
 * want it), how fine the grind for its die, how hard the pellets; and a sieve analysis that lost
 * more than half a percent of its charge (S319, from memory).
 */
final class QualityOutsidePractice implements RecordRule {
  private static final Code CODE = new Code("quality-outside-practice");
  private static final double LOSS = 0.005;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    mixer(
        batch,
        practice(batch, out, "mix longer, look at the fill and the paddles, test again"),
        out);
    batch
        .record()
        .durability()
        .ifPresent(
            told ->
                hold(
                    practice(batch, out, "look at grind, steam, die and cooling"),
                    BoundOf.DURABILITY,
                    told.place(),
                    "pellets left after tumbling are",
                    told.thing().share()));
    batch.record().sieve().ifPresent(sieved -> sieve(batch, sieved, out));
  }

  private static OutsidePractice practice(MadeBatch batch, Consumer<Finding> out, String advice) {
    return new OutsidePractice(
        CODE, batch.tables().practice(), found -> out.accept(Advice.in(found, advice)));
  }

  private static void mixer(MadeBatch batch, OutsidePractice practice, Consumer<Finding> out) {
    if (batch.record().mixer().isEmpty() || RecordFigureOff.mixer(batch).isPresent()) {
      return;
    }
    MixerTest test = batch.record().mixer().get().thing();
    boolean premix = batch.order().feed().isEmpty();
    hold(
        practice,
        premix ? BoundOf.MIXING_VARIATION_STRICT : BoundOf.MIXING_VARIATION,
        batch.record().mixer().get().place(),
        "samples of the mix differ by a coefficient of",
        test.variation());
    if (test.readings().size() < MixerTest.USUAL_SAMPLES) {
      out.accept(
          Finding.note(
                  CODE,
                  batch.record().mixer().get().place(),
                  "the mixer test has "
                      + test.readings().size()
                      + " samples, usual are "
                      + MixerTest.USUAL_SAMPLES)
              .helping("take ten of about 100 g at equal intervals: fewer say little"));
    }
  }

  private static void sieve(MadeBatch batch, Sieved sieved, Consumer<Finding> out) {
    if (RecordFigureOff.sieve(batch).isPresent()) {
      return;
    }
    double found = sieved.analysis().recovered();
    double charge = sieved.charge().map(Located::thing).orElse(found);
    if (Closeness.isAbove(Math.abs(found - charge), LOSS * charge)) {
      out.accept(
          Finding.warning(
                  CODE,
                  sieved.place(),
                  "the sieves hold "
                      + Figures.plain(found, Unit.G)
                      + " of a charge of "
                      + Figures.plain(charge, Unit.G))
              .helping("more than 0.5 % is lost or found: weigh and sieve again"));
    }
    die(batch)
        .ifPresent(
            die ->
                hold(
                    practice(batch, out, "grind it again, or through a finer screen"),
                    BoundOf.GRIND_OF_DIE,
                    sieved.place(),
                    "the mean diameter of "
                        + Figures.plain(sieved.analysis().meanDiameter(), Unit.UM)
                        + " as a part of the die of "
                        + Figures.plain(die, Unit.MM)
                        + " is",
                    sieved.analysis().meanDiameter() / die));
  }

  private static Optional<Double> die(MadeBatch batch) {
    return batch
        .order()
        .feed()
        .map(feed -> feed.recipe().process())
        .flatMap(passes -> passes.die())
        .map(Setting::aim);
  }

  private static void hold(
      OutsidePractice practice,
      BoundOf which,
      dev.pellucid.text.Span place,
      String what,
      double share) {
    practice.hold(which, place, what, share, share, it -> Figures.plain(it, Unit.PERCENT));
  }
}
