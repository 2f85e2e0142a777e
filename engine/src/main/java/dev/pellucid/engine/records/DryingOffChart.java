package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Drying;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A moisture curve that is not that of a dryer: a reading above the one before by more than half a
 * point (common practice, no source: what meters differ by), or an end outside what the recipe
 * accepts.
 */
final class DryingOffChart implements RecordRule {
  private static final Code CODE = new Code("drying-off-chart");
  private static final double METER = 0.005;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    Optional<Drying> drying = batch.record().drying();
    if (drying.isEmpty()) {
      return;
    }
    rises(drying.get(), out);
    Optional<Setting> aim =
        batch.order().feed().flatMap(feed -> aim(feed.recipe().process().inOrder()));
    if (aim.isPresent()) {
      drying.get().last().ifPresent(last -> end(aim.get(), last, out));
    }
  }

  private static void rises(Drying drying, Consumer<Finding> out) {
    double before = drying.before().thing();
    for (Drying.Read read : drying.readings()) {
      if (read.moisture() > before + METER) {
        out.accept(
            Finding.warning(
                    CODE,
                    read.place(),
                    "after "
                        + Figures.plain(read.hours(), Unit.HOUR)
                        + " the moisture is "
                        + percent(read.moisture())
                        + ", it was "
                        + percent(before)
                        + " before")
                .helping(
                    "nothing gets wetter in a dryer: read again, from the middle of the load"));
      }
      before = read.moisture();
    }
  }

  private static Optional<Setting> aim(List<Pass> passes) {
    return passes.stream()
        .filter(pass -> pass.step() == Step.DRY)
        .flatMap(pass -> pass.setting(Property.MOISTURE).stream())
        .reduce((first, second) -> second);
  }

  private static void end(Setting aim, Drying.Read last, Consumer<Finding> out) {
    boolean wet = Closeness.isAbove(last.moisture(), aim.band().high());
    boolean dry = Closeness.isBelow(last.moisture(), aim.band().low());
    if (wet || dry) {
      out.accept(
          Finding.warning(
                  CODE,
                  last.place(),
                  "drying ended at "
                      + percent(last.moisture())
                      + " moisture, accepted are "
                      + Figures.plain(aim.band().low() * 100)
                      + " to "
                      + percent(aim.band().high()))
              .seeing("target written", aim.span())
              .helping(
                  wet
                      ? "dry it on before it is packed: moulds grow in moist feed"
                      : "it lost weight for nothing and may be brittle: stop earlier"));
    }
  }

  private static String percent(double share) {
    return Figures.plain(share, Unit.PERCENT);
  }
}
