package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Sieved;
import dev.pellucid.engine.quality.MixerTest;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A figure that does not fit those beside it, and would with its point moved: of a sieve analysis,
 * a mixer test or the fines. It is a slip of the pen, and not what was found.
 */
final class RecordFigureOff implements RecordRule {
  static final Code CODE = new Code("record-figure-off");

  /** A reading so far outside the others is no unevenness; common practice, no source. */
  private static final double FAR = 3;

  /** More of a batch than this part is hardly sieved out; common practice, no source. */
  private static final double MOST_FINES = 0.25;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    mixer(batch).ifPresent(out);
    sieve(batch).ifPresent(out);
    fines(batch.record()).ifPresent(out);
  }

  /** Fines that are more than a sieve takes out. */
  static Optional<Finding> fines(BatchRecord record) {
    return record
        .fines()
        .filter(fines -> fines.kg() > MOST_FINES * record.kg())
        .map(
            fines ->
                told(
                    fines.place(),
                    "the fines are "
                        + Figures.plain(fines.kg(), Unit.KG)
                        + " of a batch of "
                        + Figures.plain(record.kg(), Unit.KG),
                    Optional.of(Figures.plain(fines.kg() / 10, Unit.KG))));
  }

  /** The reading of a mixer test that is off; of so few nothing is said. */
  static Optional<Finding> mixer(MadeBatch batch) {
    Optional<Located<MixerTest>> mixer = batch.record().mixer();
    if (mixer.isEmpty() || mixer.get().thing().readings().size() < 4) {
      return Optional.empty();
    }
    MixerTest test = mixer.get().thing();
    for (int i = 0; i < test.readings().size(); i++) {
      double least = Double.MAX_VALUE;
      double most = 0;
      for (int k = 0; k < test.readings().size(); k++) {
        if (k != i) {
          least = Math.min(least, test.readings().get(k));
          most = Math.max(most, test.readings().get(k));
        }
      }
      double reading = test.readings().get(i);
      boolean even = most < least * FAR;
      if (even && (reading > most * FAR || reading < least / FAR)) {
        Optional<Double> meant = TenTimes.moved(reading, least / 1.2, most * 1.2);
        String others = percent(least) + " to " + percent(most);
        return Optional.of(
            told(
                mixer.get().place(),
                "reading " + (i + 1) + " is " + percent(reading) + ", the others are " + others,
                meant.map(RecordFigureOff::percent)));
      }
    }
    return Optional.empty();
  }

  /** The opening, the mass, the pan or the charge that is off. */
  static Optional<Finding> sieve(MadeBatch batch) {
    Optional<Sieved> sieved = batch.record().sieve();
    if (sieved.isEmpty()) {
      return Optional.empty();
    }
    Optional<Finding> opening = SieveStack.opening(sieved.get());
    return opening.isPresent() ? opening : SieveStack.mass(sieved.get());
  }

  static Finding told(Span place, String headline, Optional<String> meant) {
    Finding finding = Finding.warning(CODE, place, headline);
    return meant.isPresent()
        ? finding.helping(Meant.question(meant.get()))
        : finding.helping("look at the sheet it was taken from");
  }

  private static String percent(double share) {
    return Figures.plain(share, Unit.PERCENT);
  }
}
