package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchNames.Earlier;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One file of {@code batches/}. */
final class BatchReader {
  private final Remarks remarks;
  private final BatchNames names;
  private final FigureReader figures;

  private BatchReader(BatchNames names, Remarks remarks) {
    this.names = names;
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
  }

  static Read<Optional<BatchRecord>> read(DataFile file, BatchNames names) {
    Remarks remarks = new Remarks();
    Optional<BatchNumber> number = BatchNumber.of(file.stem());
    if (number.isEmpty()) {
      remarks.add(LotFindings.batch(file.source().beginning(), file.stem()));
      return file.read(Optional.empty(), remarks);
    }
    BatchReader reader = new BatchReader(names, remarks);
    return file.read(
        file.fields(BatchVocabulary.BATCH_KEYS, remarks)
            .flatMap(fields -> reader.record(file, fields, number.get())),
        remarks);
  }

  /** Empty where its size cannot be read: without it nothing can be held against a plan. */
  private Optional<BatchRecord> record(DataFile file, Fields fields, BatchNumber number) {
    OptionalDouble size = positive(fields, BatchVocabulary.SIZE, Extent.WEIGHT);
    List<Entry> entries = new ArrayList<>();
    fields.blocks(BatchVocabulary.WEIGHED).forEach(it -> entry(it).ifPresent(entries::add));
    QualityReader quality = new QualityReader(figures, remarks);
    MadeReader made = new MadeReader(names, figures, remarks);
    Optional<Bags> bags = made.bags(fields, file.stem());
    BatchRecord record =
        new BatchRecord(
            file.stem(),
            number.code(),
            number.day(),
            number.serial(),
            size.orElse(1),
            fields
                .text(BatchVocabulary.AFTER)
                .filter(before -> names.isBefore(before, file.stem(), Earlier.ON_THE_LINE, remarks))
                .map(before -> new Located<>(before.text(), before.span())),
            fields.block(BatchVocabulary.FLUSHED).flatMap(this::flushed),
            fields.block(BatchVocabulary.CLEANED).flatMap(it -> cleaned(it, number.day())),
            entries,
            told(fields, BatchVocabulary.WATER, amount(fields, BatchVocabulary.WATER, Kind.MASS)),
            fields
                .block(BatchVocabulary.DRYING)
                .flatMap(new DryingReader(figures, remarks)::drying),
            bags.map(MadeReader::all),
            quality.mixer(fields),
            quality.sieve(fields),
            quality.durability(fields),
            fields.texts(BatchVocabulary.DEVIATIONS).stream().map(Scalar::text).toList(),
            release(fields),
            fields.word(BatchVocabulary.CLOSED, "a value of closed").isPresent(),
            made.madeFrom(fields),
            made.rebalanced(fields),
            bags,
            made.fines(fields),
            made.samples(fields),
            SinceReader.of(fields, names, remarks, figures, bags),
            fields.has(BatchVocabulary.SIZE) ? fields.placeOf(BatchVocabulary.SIZE) : file.place());
    return size.isEmpty() ? Optional.empty() : Optional.of(record);
  }

  private Optional<Entry> entry(Fields block) {
    Optional<Scalar> line = block.text(BatchVocabulary.WEIGHED_LINE);
    Optional<Scalar> lot = block.text(BatchVocabulary.WEIGHED_LOT);
    OptionalDouble kg = amount(block, BatchVocabulary.WEIGHED_WEIGHT, Kind.MASS);
    Span lotPlace =
        block.has(BatchVocabulary.WEIGHED_LOT)
            ? block.placeOf(BatchVocabulary.WEIGHED_LOT)
            : block.placeOf(BatchVocabulary.WEIGHED_LINE);
    Span weight =
        block.has(BatchVocabulary.WEIGHED_WEIGHT)
            ? block.placeOf(BatchVocabulary.WEIGHED_WEIGHT)
            : block.placeOf(BatchVocabulary.WEIGHED_LINE);
    return line.map(
        name ->
            new Entry(
                name.text(),
                lot.flatMap(it -> names.lot(it, name.text(), remarks)).orElse(""),
                lot.map(Scalar::text).orElse(""),
                block.textOr(BatchVocabulary.WEIGHED_BIN, ""),
                kg,
                name.span(),
                lotPlace,
                weight));
  }

  private Optional<Flushed> flushed(Fields block) {
    OptionalDouble kg = positive(block, SequenceVocabulary.FLUSH_QUANTITY, Extent.WEIGHT);
    Optional<Scalar> with =
        block
            .text(SequenceVocabulary.FLUSH_WITH)
            .filter(name -> names.ingredients().check(name, remarks));
    return kg.isPresent() && with.isPresent()
        ? Optional.of(
            new Flushed(
                kg.getAsDouble(),
                with.get().text(),
                block
                    .text(BatchVocabulary.FLUSH_LOT)
                    .flatMap(it -> names.lot(it, with.get().text(), remarks))
                    .orElse(""),
                block.text(SequenceVocabulary.FLUSH_TO).map(Scalar::text).orElse(""),
                block.placeOf(SequenceVocabulary.FLUSH_QUANTITY),
                block.placeOf(SequenceVocabulary.FLUSH_TO)))
        : Optional.empty();
  }

  /** Empty where it is not told in full: what is half told makes no line clean. */
  private Optional<Signed> cleaned(Fields block, LocalDate made) {
    Optional<Signed> signed = new SignedReader(figures).of(block, BatchVocabulary.CLEANED_HOW);
    if (signed.filter(it -> it.day().isAfter(made)).isPresent()) {
      remarks.add(
          LotFindings.record(
              signed.get().place(),
              "the line was cleaned on " + signed.get().day() + ", after this batch of " + made,
              "write the day on which it was cleaned before this batch, or take cleaned out"));
      return Optional.empty();
    }
    return signed.filter(it -> !it.by().isBlank() && !it.because().isBlank());
  }

  private Optional<Release> release(Fields fields) {
    return fields
        .block(BatchVocabulary.RELEASE)
        .flatMap(
            block ->
                block
                    .oneOf(BatchVocabulary.RELEASE_DECISION, "a decision")
                    .map(
                        decision ->
                            new Release(
                                decision,
                                block.text(BatchVocabulary.RELEASE_BY).map(Scalar::text).orElse(""),
                                figures.day(block.text(BatchVocabulary.RELEASE_DAY)),
                                block
                                    .text(BatchVocabulary.RELEASE_BECAUSE)
                                    .map(Scalar::text)
                                    .orElse(""),
                                block.placeOf(BatchVocabulary.RELEASE_DECISION))));
  }

  private static Optional<Located<Double>> told(
      Fields fields, Key<Text> key, OptionalDouble figure) {
    return figure.isEmpty()
        ? Optional.empty()
        : Optional.of(new Located<>(figure.getAsDouble(), fields.placeOf(key)));
  }

  private OptionalDouble amount(Fields fields, Key<Text> key, Kind kind) {
    return figures.base(fields.text(key), kind);
  }

  private OptionalDouble positive(Fields fields, Key<Text> key, Extent extent) {
    return figures.positive(fields.text(key), extent);
  }
}
