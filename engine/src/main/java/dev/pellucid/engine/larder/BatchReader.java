package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.BatchRecord.Decision;
import dev.pellucid.engine.larder.BatchRecord.Drying;
import dev.pellucid.engine.larder.BatchRecord.Entry;
import dev.pellucid.engine.larder.BatchRecord.Flushed;
import dev.pellucid.engine.larder.BatchRecord.Release;
import dev.pellucid.engine.larder.BatchRecord.Told;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

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
        file.fields(Vocabulary.BATCH, remarks)
            .flatMap(fields -> reader.record(file, fields, number.get())),
        remarks);
  }

  /** Empty where its size cannot be read: without it nothing can be held against a plan. */
  private Optional<BatchRecord> record(DataFile file, Fields fields, BatchNumber number) {
    OptionalDouble size = positive(fields, "size", Extent.WEIGHT);
    List<Entry> entries = new ArrayList<>();
    fields.blocks("weighed", Vocabulary.WEIGHED).forEach(it -> entry(it).ifPresent(entries::add));
    QualityReader quality = new QualityReader(figures, remarks);
    BatchRecord record =
        new BatchRecord(
            file.stem(),
            number.code(),
            number.day(),
            number.serial(),
            size.orElse(1),
            fields
                .text("after")
                .filter(before -> names.isBefore(before, file.stem(), remarks))
                .map(before -> new Told<>(before.text(), before.span())),
            fields.block("flushed", Vocabulary.FLUSH).flatMap(this::flushed),
            entries,
            told(fields, "water", amount(fields, "water", Kind.MASS)),
            fields.block("drying", Vocabulary.DRYING).flatMap(this::drying),
            bagged(fields),
            quality.mixer(fields),
            quality.sieve(fields),
            quality.durability(fields),
            fields.texts("deviations").stream().map(Scalar::text).toList(),
            release(fields),
            fields.word("closed", "a value of closed", List.of("yes")).isPresent(),
            fields.has("size") ? fields.placeOf("size") : file.place());
    return size.isEmpty() ? Optional.empty() : Optional.of(record);
  }

  private Optional<Entry> entry(Fields block) {
    Optional<Scalar> line = block.text("line");
    Optional<Scalar> lot = block.text("lot");
    OptionalDouble kg = amount(block, "weight", Kind.MASS);
    Span lotPlace = block.has("lot") ? block.placeOf("lot") : block.placeOf("line");
    Span weight = block.has("weight") ? block.placeOf("weight") : block.placeOf("line");
    return line.map(
        name ->
            new Entry(
                name.text(),
                lot.flatMap(it -> names.lot(it, remarks)).orElse(""),
                lot.map(Scalar::text).orElse(""),
                kg,
                name.span(),
                lotPlace,
                weight));
  }

  private Optional<Flushed> flushed(Fields block) {
    OptionalDouble kg = positive(block, "quantity", Extent.WEIGHT);
    Optional<Scalar> with =
        block.text("with").filter(name -> names.ingredients().check(name, remarks));
    return kg.isPresent() && with.isPresent()
        ? Optional.of(
            new Flushed(
                kg.getAsDouble(),
                with.get().text(),
                block.text("to").map(Scalar::text).orElse(""),
                block.placeOf("quantity")))
        : Optional.empty();
  }

  private Optional<Drying> drying(Fields block) {
    OptionalDouble before = share(block, "before");
    OptionalDouble load = positive(block, "load", Extent.WEIGHT);
    if (before.isEmpty()) {
      return Optional.empty();
    }
    List<Drying.Read> readings = new ArrayList<>();
    for (Fields one : block.blocks("readings", Vocabulary.READING)) {
      reading(one, before.getAsDouble(), load).ifPresent(readings::add);
    }
    readings.sort(Comparator.comparingDouble(Drying.Read::hours));
    return Optional.of(
        new Drying(new Told<>(before.getAsDouble(), block.placeOf("before")), readings));
  }

  private Optional<Drying.Read> reading(Fields block, double before, OptionalDouble load) {
    OptionalDouble hours = amount(block, "at", Kind.TIME);
    if (block.has("moisture") == block.has("tray") || (block.has("tray") && load.isEmpty())) {
      remarks.add(
          LotFindings.record(
              block.place(),
              "a reading is a moisture, or the weight of a tray whose load is told",
              "write moisture: 12 %, or tray: 1.7 kg and load: 2 kg above the readings"));
      return Optional.empty();
    }
    if (block.has("moisture")) {
      OptionalDouble moisture = share(block, "moisture");
      return hours.isPresent() && moisture.isPresent()
          ? Optional.of(
              new Drying.Read(
                  hours.getAsDouble(), moisture.getAsDouble(), block.placeOf("moisture")))
          : Optional.empty();
    }
    OptionalDouble tray = positive(block, "tray", Extent.WEIGHT);
    return hours.isPresent() && tray.isPresent()
        ? ofTray(block, hours.getAsDouble(), load.getAsDouble() * (1 - before), tray.getAsDouble())
        : Optional.empty();
  }

  /** Dry matter stays on the tray, so that its share of the weight tells the moisture. */
  private Optional<Drying.Read> ofTray(Fields block, double hours, double dry, double tray) {
    if (tray < dry) {
      remarks.add(
          LotFindings.record(
              block.placeOf("tray"),
              "the tray weighs less than the dry matter that was loaded onto it",
              "look at the weights again, net of the tray itself"));
      return Optional.empty();
    }
    return Optional.of(new Drying.Read(hours, 1 - dry / tray, block.placeOf("tray")));
  }

  private Optional<Told<Double>> bagged(Fields fields) {
    Optional<Fields> block = fields.block("bags", Vocabulary.BAGS);
    if (block.isEmpty()) {
      return Optional.empty();
    }
    OptionalInt full = block.get().text("full").map(figures::count).orElse(OptionalInt.empty());
    OptionalDouble of = positive(block.get(), "of", Extent.WEIGHT);
    OptionalDouble rest = amount(block.get(), "rest", Kind.MASS);
    if (full.isPresent() != of.isPresent() || (full.isEmpty() && rest.isEmpty())) {
      if (!block.get().has("full") || !block.get().has("of")) {
        remarks.add(
            LotFindings.record(
                block.get().place(),
                "bags are told by how many are full, of what, and the rest",
                "write full: 2, of: 25 kg and rest: 6.4 kg"));
      }
      return Optional.empty();
    }
    double kg = full.orElse(0) * of.orElse(0) + rest.orElse(0);
    return Optional.of(new Told<>(kg, fields.placeOf("bags")));
  }

  private Optional<Release> release(Fields fields) {
    return fields
        .block("release", Vocabulary.RELEASE)
        .flatMap(
            block ->
                block
                    .oneOf("decision", "a decision", Decision.class)
                    .map(
                        decision ->
                            new Release(
                                decision,
                                block.text("by").map(Scalar::text).orElse(""),
                                block.text("because").map(Scalar::text).orElse(""),
                                block.placeOf("decision"))));
  }

  private static Optional<Told<Double>> told(Fields fields, String key, OptionalDouble figure) {
    return figure.isEmpty()
        ? Optional.empty()
        : Optional.of(new Told<>(figure.getAsDouble(), fields.placeOf(key)));
  }

  private OptionalDouble amount(Fields fields, String key, Kind kind) {
    return fields.text(key).map(value -> figures.base(value, kind)).orElse(OptionalDouble.empty());
  }

  private OptionalDouble positive(Fields fields, String key, Extent extent) {
    return fields
        .text(key)
        .map(value -> figures.positive(value, extent))
        .orElse(OptionalDouble.empty());
  }

  private OptionalDouble share(Fields fields, String key) {
    return fields.text(key).map(figures::share).orElse(OptionalDouble.empty());
  }
}
