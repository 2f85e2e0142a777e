package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.quality.LabSpread;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.records.LabResults.Found;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.Measured.What;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What laboratories found of a batch beside the feed as it was made, and how far the two are apart
 * by chance: by what varies from lot to lot, by the laboratory that analysed the feed, and by the
 * one that analysed its lots. A lot that was measured does not vary any more, and what was measured
 * of it is as exact as a laboratory is.
 *
 * <p>Where the moisture was found too, all else is expected at that moisture, so that one that is
 * off is told once and not with each figure.
 */
final class LabFigures {
  /** What the meter of a dryer is off by; half of what two meters differ by. */
  static final double METER = DryingOffChart.METER / 2;

  /** An accepted band holds nearly all: two spreads to either side; common practice, no source. */
  static final double BAND = 4;

  private final MadeBatch batch;
  private final FeedTables tables;
  private final ComputedFeed feed;
  private final Readings readings;
  private final Map<String, Found> found;

  private LabFigures(MadeBatch batch, ComputedFeed feed, Map<String, Found> found) {
    this.batch = batch;
    this.tables = batch.tables();
    this.feed = feed;
    this.readings = new Readings(feed);
    this.found = found;
  }

  /** In the order of the record. */
  static List<Measured> of(MadeBatch batch, ComputedFeed feed) {
    Map<String, Found> found = LabResults.of(batch.record());
    if (found.isEmpty()) {
      return List.of();
    }
    LabFigures figures = new LabFigures(batch, feed, found);
    List<Measured> all = new ArrayList<>();
    found.forEach((name, one) -> figures.figure(name, one).ifPresent(all::add));
    return all;
  }

  private Optional<Measured> figure(String name, Found one) {
    return tables
        .nutrients()
        .named(name)
        .filter(Nutrient::analysed)
        .map(nutrient -> figure(nutrient, one));
  }

  private Measured figure(Nutrient nutrient, Found one) {
    boolean water = feed.nutrients().isMoisture(nutrient.index());
    Reading reading =
        readings.varying(
            new Subject.Nutrients(List.of(nutrient), nutrient.name()),
            new Basis.AsFed(),
            Scenario.EXPECTED);
    boolean told = reading.certainty() == Certainty.TOLD;
    double times = water ? 1 : timesForMoisture();
    double expected = reading.value() * times;
    double spread = Math.sqrt(squares(nutrient, reading, times, expected, one));
    boolean known = told && spread > 0 && (!reading.spreadUnknown() || (water && isSet()));
    return new Measured(
        water ? What.MOISTURE : What.CONTENT,
        nutrient.name(),
        nutrient.title(),
        nutrient.unit(),
        one.mean(),
        told ? OptionalDouble.of(expected) : OptionalDouble.empty(),
        known ? OptionalDouble.of(spread) : OptionalDouble.empty(),
        true,
        one.last().place());
  }

  /** Whether a step brings the feed to a moisture of its own, whatever its ingredients hold. */
  private boolean isSet() {
    return feed.balances().expected().moistureSet().isPresent();
  }

  /** A drier feed holds more of all else. */
  private double timesForMoisture() {
    double dry = 1 - expectedMoisture();
    Found moisture = found.get(Nutrients.MOISTURE);
    return moisture == null || dry <= 0 ? 1 : Math.max(0, 1 - moisture.mean()) / dry;
  }

  private double expectedMoisture() {
    return feed.balances().expected().moisture();
  }

  private double squares(
      Nutrient nutrient, Reading reading, double times, double expected, Found one) {
    double lots = reading.deviation() * times;
    double laboratory = one.square(LabSpread.of(expected, nutrient.unit().kind()));
    double measured = feed.nutrients().isMoisture(nutrient.index()) ? 0 : ofMeasured(nutrient);
    double water = ofMoisture(nutrient, expected);
    return lots * lots + laboratory + measured + water * water;
  }

  /** What an unsure moisture does to it. */
  private double ofMoisture(Nutrient nutrient, double expected) {
    if (feed.nutrients().isMoisture(nutrient.index())) {
      return moistureSpread(batch);
    }
    double dry = 1 - expectedMoisture();
    return found.containsKey(Nutrients.MOISTURE) || dry <= 0
        ? 0
        : expected / dry * moistureSpread(batch);
  }

  /** Where the moisture was read it is as exact as the meter; else it is somewhere in its band. */
  private static double moistureSpread(MadeBatch batch) {
    boolean read = batch.record().drying().flatMap(it -> it.last()).isPresent();
    return read
        ? METER
        : batch
            .order()
            .feed()
            .map(planned -> span(planned, planned.nutrients().moisture()) / BAND)
            .orElse(0.0);
  }

  private static double span(ComputedFeed planned, Optional<Nutrient> moisture) {
    return moisture
        .map(
            one ->
                planned.content(Scenario.RICHEST, one.index())
                    - planned.content(Scenario.POOREST, one.index()))
        .orElse(0.0);
  }

  /**
   * The square of what the laboratories that analysed the lots are off by, lot by lot; where a lot
   * writes its own spread, that is among what varies from lot to lot.
   */
  private double ofMeasured(Nutrient nutrient) {
    double finished = feed.balances().expected().finished();
    Map<String, Double> byLot = new HashMap<>();
    for (Row row : feed.rows()) {
      Optional<Content> told =
          measured(row, nutrient).filter(one -> one.low() > 0 && one.spread().isEmpty());
      if (told.isPresent()) {
        double content = told.get().low();
        double part = LabSpread.of(content, nutrient.unit().kind()) / content;
        double brings = row.amount(Scenario.EXPECTED, nutrient.index()) / finished;
        byLot.merge(row.ingredient().lot(), part * brings, Double::sum);
      }
    }
    return byLot.values().stream().mapToDouble(one -> one * one).sum();
  }

  private Optional<Content> measured(Row row, Nutrient nutrient) {
    Lot lot = tables.lots().get(row.ingredient().lot());
    return lot == null ? Optional.empty() : lot.measured(nutrient.name());
  }
}
