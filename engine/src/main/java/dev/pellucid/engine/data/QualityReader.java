package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Sieved;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.quality.Durability;
import dev.pellucid.engine.quality.MixerTest;
import dev.pellucid.engine.quality.SieveAnalysis;
import dev.pellucid.engine.quality.SieveAnalysis.Fraction;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Mixer test, sieve analysis and durability of a batch record. */
final class QualityReader {
  private final FigureReader figures;
  private final Remarks remarks;

  QualityReader(FigureReader figures, Remarks remarks) {
    this.figures = figures;
    this.remarks = remarks;
  }

  Optional<Located<MixerTest>> mixer(Fields record) {
    return record.block(BatchVocabulary.MIXER_TEST).flatMap(this::mixerTest);
  }

  private Optional<Located<MixerTest>> mixerTest(Fields block) {
    List<Double> readings = new ArrayList<>();
    List<Scalar> written = block.texts(BatchVocabulary.MIXER_READINGS);
    for (Scalar one : written) {
      OptionalDouble reading = figures.share(one);
      if (reading.isPresent()) {
        readings.add(reading.getAsDouble());
      }
    }
    if (readings.size() < written.size() || !block.has(BatchVocabulary.MIXER_READINGS)) {
      return Optional.empty();
    }
    if (readings.size() < 2 || readings.stream().allMatch(it -> it == 0)) {
      remarks.add(
          LotFindings.record(
              block.placeOf(BatchVocabulary.MIXER_READINGS),
              "a mixer test needs two readings at least, and not all of them nothing",
              "write what was found in each sample, ten of them if you can"));
      return Optional.empty();
    }
    return Optional.of(
        new Located<>(new MixerTest(readings), block.placeOf(BatchVocabulary.MIXER_READINGS)));
  }

  Optional<Sieved> sieve(Fields record) {
    return record.block(BatchVocabulary.SIEVE).flatMap(this::sieved);
  }

  private Optional<Sieved> sieved(Fields block) {
    List<Fraction> fractions = new ArrayList<>();
    List<Sieved.Row> written = new ArrayList<>();
    List<Fields> rows = block.blocks(BatchVocabulary.SIEVE_ROWS);
    for (Fields row : rows) {
      OptionalDouble opening = positive(row, BatchVocabulary.SIEVE_ROW_OPENING, Extent.LENGTH);
      OptionalDouble mass = amount(row, BatchVocabulary.SIEVE_ROW_MASS);
      if (opening.isPresent() && mass.isPresent()) {
        fractions.add(new Fraction(opening.getAsDouble(), mass.getAsDouble()));
        written.add(
            new Sieved.Row(
                new Located<>(
                    opening.getAsDouble(), row.placeOf(BatchVocabulary.SIEVE_ROW_OPENING)),
                new Located<>(mass.getAsDouble(), row.placeOf(BatchVocabulary.SIEVE_ROW_MASS))));
      }
    }
    OptionalDouble pan = amount(block, BatchVocabulary.SIEVE_PAN);
    if (fractions.size() < rows.size() || (block.has(BatchVocabulary.SIEVE_PAN) && pan.isEmpty())) {
      return Optional.empty();
    }
    long different = fractions.stream().mapToDouble(Fraction::opening).distinct().count();
    double all = fractions.stream().mapToDouble(Fraction::mass).sum() + pan.orElse(0);
    if (fractions.isEmpty() || different < fractions.size() || all <= 0) {
      remarks.add(
          LotFindings.record(
              block.place(),
              "a sieve analysis needs sieves, each once, and something on them",
              "write one row for each sieve of the stack, and what was in the pan"));
      return Optional.empty();
    }
    OptionalDouble charge = positive(block, BatchVocabulary.SIEVE_CHARGE, Extent.WEIGHT);
    return Optional.of(
        new Sieved(
            new SieveAnalysis(fractions, pan.orElse(0)),
            written,
            told(block, BatchVocabulary.SIEVE_PAN, pan),
            told(block, BatchVocabulary.SIEVE_CHARGE, charge),
            block.place()));
  }

  Optional<Located<Durability>> durability(Fields record) {
    return record.block(BatchVocabulary.DURABILITY).flatMap(this::durable);
  }

  private Optional<Located<Durability>> durable(Fields block) {
    OptionalDouble before = positive(block, BatchVocabulary.DURABILITY_BEFORE, Extent.WEIGHT);
    OptionalDouble after = amount(block, BatchVocabulary.DURABILITY_AFTER);
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    if (after.getAsDouble() > before.getAsDouble()) {
      remarks.add(
          LotFindings.record(
              block.placeOf(BatchVocabulary.DURABILITY_AFTER),
              "more pellets came out of the tumbling box than went in",
              "before is what went in, after is what stayed on the sieve"));
      return Optional.empty();
    }
    return Optional.of(
        new Located<>(
            new Durability(before.getAsDouble(), after.getAsDouble()),
            block.placeOf(BatchVocabulary.DURABILITY_AFTER)));
  }

  private static Optional<Located<Double>> told(
      Fields fields, Key<Text> key, OptionalDouble figure) {
    return figure.isEmpty()
        ? Optional.empty()
        : Optional.of(new Located<>(figure.getAsDouble(), fields.placeOf(key)));
  }

  private OptionalDouble amount(Fields fields, Key<Text> key) {
    return figures.base(fields.text(key), Kind.MASS);
  }

  private OptionalDouble positive(Fields fields, Key<Text> key, Extent extent) {
    return figures.positive(fields.text(key), extent);
  }
}
