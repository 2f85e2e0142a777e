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
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A moisture curve that is not that of a dryer: a reading above the one before by more than half a
 * point (common practice, no source: what meters differ by), or an end outside what the recipe
 * accepts.
 */
final class DryingOffChart implements RecordRule {
  static final Code CODE = new Code("drying-off-chart");
  static final double METER = 0.005;

  /** So many times as long as planned is no long drying, but a slip; no source. */
  private static final double FAR = 3;

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
    Optional<Drying.Read> slip = slip(drying.get());
    if (slip.isPresent()) {
      out.accept(untimely(drying.get(), slip.get()));
      return;
    }
    Optional<Finding> longer = length(batch, drying.get());
    longer.ifPresent(out);
    rises(drying.get(), out);
    Optional<Setting> aim =
        batch
            .order()
            .feed()
            .flatMap(feed -> aim(feed.recipe().process().inOrder(), Property.MOISTURE));
    if (aim.isPresent()) {
      drying.get().last().ifPresent(last -> end(aim.get(), last, out));
    }
  }

  /** Whether it lasted many times as long as is planned, or a small part of it. */
  private static Optional<Finding> length(MadeBatch batch, Drying drying) {
    Optional<Setting> planned =
        batch.order().feed().flatMap(feed -> aim(feed.recipe().process().inOrder(), Property.TIME));
    Optional<Drying.Read> last = drying.last();
    if (planned.isEmpty() || last.isEmpty()) {
      return Optional.empty();
    }
    double hours = last.get().hours();
    double low = planned.get().band().low();
    double high = planned.get().band().high();
    return hours > high * FAR || hours < low / FAR
        ? Optional.of(
            Finding.warning(
                    CODE,
                    last.get().at(),
                    "drying ended after "
                        + Figures.plain(hours, Unit.HOUR)
                        + ", planned are "
                        + Figures.plain(low, Unit.HOUR)
                        + " to "
                        + Figures.plain(high, Unit.HOUR))
                .seeing("time written", planned.get().span())
                .helping("look at the time again: has its point slipped?"))
        : Optional.empty();
  }

  /** Where a time of reading stands that does not lie between those beside it. */
  static Optional<Span> slip(MadeBatch batch) {
    return batch.record().drying().flatMap(DryingOffChart::slip).map(Drying.Read::at);
  }

  /** The reading whose time, with its point moved, lies between those beside it. */
  private static Optional<Drying.Read> slip(Drying drying) {
    int off = -1;
    for (int i = 1; i < drying.readings().size(); i++) {
      off = off < 0 && !isLater(drying, i) ? i : off;
    }
    if (off < 0) {
      return Optional.empty();
    }
    Drying.Read slip = drying.readings().get(off);
    double evenest = Double.POSITIVE_INFINITY;
    double[] hours = new double[drying.readings().size()];
    for (int i = 0; i < hours.length; i++) {
      hours[i] = drying.readings().get(i).hours();
    }
    for (int i = 0; i < hours.length; i++) {
      double written = hours[i];
      for (double places : TenTimes.ONE_PLACE) {
        hours[i] = written * places;
        double uneven = unevenness(hours);
        if (uneven < evenest) {
          evenest = uneven;
          slip = drying.readings().get(i);
        }
      }
      hours[i] = written;
    }
    return Optional.of(slip);
  }

  /** The longest step of time in the shortest; without end where a step leads back. */
  private static double unevenness(double[] hours) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < hours.length; i++) {
      double step = i == 0 ? hours[0] : hours[i] - hours[i - 1];
      if (step <= 0) {
        return Double.POSITIVE_INFINITY;
      }
      least = Math.min(least, step);
      most = Math.max(most, step);
    }
    return most / least;
  }

  private static boolean isLater(Drying drying, int i) {
    return drying.readings().get(i).hours() > drying.readings().get(i - 1).hours();
  }

  private static Finding untimely(Drying drying, Drying.Read read) {
    int at = drying.readings().indexOf(read);
    boolean first = at == 0;
    Drying.Read beside = drying.readings().get(first ? 1 : at - 1);
    return Finding.warning(
            CODE,
            read.at(),
            "a reading after "
                + Figures.plain(read.hours(), Unit.HOUR)
                + (first ? " stands before the one after " : " stands behind the one after ")
                + Figures.plain(beside.hours(), Unit.HOUR))
        .helping("look at the time again, and write the readings in the order of time");
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

  static Optional<Setting> aim(List<Pass> passes, Property property) {
    return passes.stream()
        .filter(pass -> pass.step() == Step.DRY)
        .flatMap(pass -> pass.setting(property).stream())
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
