package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Sieved;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * What a stack of sieves is like: each is finer than the one above it, by no great step, and what
 * lies on all of them is what was poured in.
 */
final class SieveStack {
  /** No stack leaves out so much between two sieves; the steps of a series are 1.2 to 2. */
  private static final double STEP = 5;

  /** Of the charge; what sieving loses and finds (ASABE S319, from memory). */
  private static final double LOSS = 0.005;

  /** What a moved point must bring it to. */
  private static final double FITS = 0.02;

  private SieveStack() {}

  /** The opening that does not stand in the order of the others, as written. */
  static Optional<Finding> opening(Sieved sieved) {
    List<Sieved.Row> rows = sieved.rows();
    double[] openings = new double[rows.size()];
    for (int i = 0; i < openings.length; i++) {
      openings[i] = rows.get(i).opening().thing();
    }
    if (openings.length < 3 || isStack(openings)) {
      return Optional.empty();
    }
    for (int i = 0; i < openings.length; i++) {
      double written = openings[i];
      for (double places : TenTimes.ONE_PLACE) {
        openings[i] = written * places;
        if (isStack(openings)) {
          Located<Double> off = rows.get(i).opening();
          return Optional.of(
              RecordFigureOff.told(
                  off.place(),
                  "a sieve of "
                      + Figures.plain(written, Unit.UM)
                      + " does not stand between those beside it",
                  Optional.of(Figures.plain(openings[i], Unit.UM))));
        }
      }
      openings[i] = written;
    }
    return Optional.empty();
  }

  private static boolean isStack(double[] openings) {
    for (int i = 1; i < openings.length; i++) {
      if (openings[i] >= openings[i - 1] || openings[i] * STEP < openings[i - 1]) {
        return false;
      }
    }
    return true;
  }

  /** The mass that with its point moved makes the sum fit the charge. */
  static Optional<Finding> mass(Sieved sieved) {
    if (sieved.charge().isEmpty()) {
      return Optional.empty();
    }
    double charge = sieved.charge().get().thing();
    double found = sieved.analysis().recovered();
    if (Math.abs(found - charge) <= LOSS * charge) {
      return Optional.empty();
    }
    Best best = new Best(FITS);
    for (Sieved.Row row : sieved.rows()) {
      best.hold(row.mass(), found, charge);
    }
    if (sieved.pan().isPresent()) {
      best.hold(sieved.pan().get(), found, charge);
    }
    for (double places : TenTimes.ONE_PLACE) {
      best.offer(
          sieved.charge().get(), places, Math.abs(found - charge * places) / (charge * places));
    }
    return best.finding(found, charge);
  }

  /** The figure whose moved point fits best. */
  private static final class Best {
    private double off;
    private Optional<Span> place = Optional.empty();
    private double meant;

    Best(double off) {
      this.off = off;
    }

    void hold(Located<Double> mass, double found, double charge) {
      for (double places : TenTimes.ONE_PLACE) {
        double sum = found + mass.thing() * (places - 1);
        offer(mass, places, Math.abs(sum - charge) / charge);
      }
    }

    void offer(Located<Double> figure, double places, double isOff) {
      if (isOff < off) {
        off = isOff;
        place = Optional.of(figure.place());
        meant = figure.thing() * places;
      }
    }

    Optional<Finding> finding(double found, double charge) {
      return place.map(
          at ->
              RecordFigureOff.told(
                  at,
                  "the sieves hold "
                      + Figures.plain(found, Unit.G)
                      + " of a charge of "
                      + Figures.plain(charge, Unit.G)
                      + ", and would hold all of it with another figure here",
                  Optional.of(Figures.plain(meant, Unit.G))));
    }
  }
}
